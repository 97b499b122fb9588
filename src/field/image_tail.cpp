#include "field/image_tail.h"

#include <cmath>

namespace toft::field {

namespace {

constexpr double negligible = 1e-10;
constexpr long farthest_start = 512;

/// The first n from which |k|^n/(1 - |k|)/n stays below what counts.
long first_negligible(double k) {
    const double size = std::fabs(k);
    if (size < negligible) return 1;
    long n = 1;
    for (double power = size; power / (1 - size) / static_cast<double>(n) > negligible; ++n) {
        power *= size;
    }
    return n;
}

/// The recurrence of Legendre polynomials: P(l+1) = up[l] x P(l) - back[l] P(l-1).
struct Recurrence {
    std::array<double, ImageTail::degree> up{};
    std::array<double, ImageTail::degree> back{};

    constexpr Recurrence() {
        for (int l = 1; l < ImageTail::degree; ++l) {
            up[l] = (2.0 * l + 1) / (l + 1);
            back[l] = static_cast<double>(l) / (l + 1);
        }
    }
};
constexpr Recurrence legendre;

}  // namespace

ImageTail::From::From(long start, long last, double k, double thickness)
    : start_(start), scale_(1 / (2 * static_cast<double>(start) * thickness)) {
    const double first = std::pow(k, static_cast<double>(start - 1));
    double power = first;
    for (long n = start; n <= last; ++n, power *= k) {
        const double ratio = static_cast<double>(start) / static_cast<double>(n);
        double term = power * ratio;
        for (int l = 0; l <= degree && std::fabs(term) > 1e-16 * std::fabs(first); ++l) {
            series_[l] += term;
            term *= ratio;
        }
    }
    for (int l = 0; l <= degree; ++l) series_[l] *= l % 2 == 0 ? scale_ : -scale_;
}

double ImageTail::From::one(double r2, double w) const {
    const double x = w * scale_;
    const double square = r2 * scale_ * scale_ + x * x;
    double before = 1;
    double now = x;
    double sum = series_[0] + series_[1] * x;
    for (int l = 1; l < degree; ++l) {
        const double next = legendre.up[l] * x * now - legendre.back[l] * square * before;
        sum += series_[l + 1] * next;
        before = now;
        now = next;
    }
    return sum;
}

double ImageTail::From::both(double r2, double w) const {
    const double x = w * scale_;
    const double square = r2 * scale_ * scale_ + x * x;
    double before = 1;
    double now = x;
    double sum = series_[0];
    for (int l = 1; l < degree; l += 2) {
        const double even = legendre.up[l] * x * now - legendre.back[l] * square * before;
        sum += series_[l + 1] * even;
        if (l + 1 == degree) break;
        const double odd = legendre.up[l + 1] * x * even - legendre.back[l + 1] * square * now;
        before = even;
        now = odd;
    }
    return 2 * sum;
}

ImageTail::ImageTail(double k, double thickness)
    : thickness_(thickness), last_(first_negligible(k)) {
    for (long start = 1; start <= farthest_start && start < last_; start *= 2) {
        tails_.emplace_back(start, last_, k, thickness);
        const long between = start + start / 2;
        if (start > 1 && between < last_) tails_.emplace_back(between, last_, k, thickness);
    }
}

const ImageTail::From* ImageTail::from(double reach) const {
    const double layers = reach / thickness_;
    for (const From& tail : tails_) {
        if (static_cast<double>(tail.start()) >= layers) return &tail;
    }
    return nullptr;
}

}  // namespace toft::field
