#include "tolerance/halton.h"

#include <cmath>

namespace toft::tolerance {

double mirrored(std::size_t n, int base) {
    double value = 0;
    double place = 1;
    for (const auto b = static_cast<std::size_t>(base); n > 0; n /= b) {
        place /= base;
        value += place * static_cast<double>(n % b);
    }
    return value;
}

Halton::Halton(std::size_t directions, std::size_t shift) : point_(directions) {
    for (std::size_t d = 0; d < directions; ++d) {
        Direction one;
        one.base = primes[d];
        const double turn = std::sqrt(static_cast<double>(primes[d])) * static_cast<double>(shift);
        one.shift = turn - std::floor(turn);
        directions_.push_back(std::move(one));
    }
}

void Halton::step(Direction& d) {
    double place = 1.0 / d.base;
    for (int& digit : d.digits) {
        if (digit + 1 < d.base) {
            ++digit;
            d.value += place;
            return;
        }
        d.value -= digit * place;
        digit = 0;
        place /= d.base;
    }
    d.digits.push_back(1);
    d.value += place;
}

const std::vector<double>& Halton::next() {
    for (std::size_t i = 0; i < directions_.size(); ++i) {
        step(directions_[i]);
        const double x = directions_[i].value + directions_[i].shift;
        point_[i] = x < 1 ? (x < 0 ? 0 : x) : x - 1;
    }
    return point_;
}

}  // namespace toft::tolerance
