#include "earth/image_tail.h"

#include <cmath>

namespace toft::earth {

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

}  // namespace

ImageTail::ImageTail(double k, double thickness)
    : thickness_(thickness), last_(first_negligible(k)) {
    double first_power = 1;  // k^(start - 1)
    for (long start = 1; start <= farthest_start && start < last_; start *= 2) {
        Series sums{};
        double power = first_power;
        for (long n = start; n <= last_; ++n, power *= k) {
            const double ratio = static_cast<double>(start) / static_cast<double>(n);
            double term = power * ratio;
            for (int l = 0; l <= degree && std::fabs(term) > 1e-16 * std::fabs(first_power); ++l) {
                sums[l] += term;
                term *= ratio;
            }
        }
        const double farthest = 2 * static_cast<double>(start) * thickness;
        for (int l = 0; l <= degree; ++l) sums[l] /= l % 2 == 0 ? farthest : -farthest;
        series_.push_back(sums);
        first_power *= std::pow(k, static_cast<double>(start));
    }
}

long ImageTail::start_for(double reach) const {
    long start = 1;
    for (std::size_t i = 0; i < series_.size(); ++i, start *= 2) {
        if (static_cast<double>(start) * thickness_ >= reach) return start;
    }
    return 0;
}

const ImageTail::Series& ImageTail::series(long start) const {
    std::size_t i = 0;
    while ((1L << i) < start) ++i;
    return series_[i];
}

double ImageTail::one(long start, double r2, double w) const {
    const Series& c = series(start);
    const double scale = 1 / (2 * static_cast<double>(start) * thickness_);
    const double x = w * scale;
    const double square = r2 * scale * scale + x * x;
    double before = 1;
    double now = x;
    double sum = c[0] + c[1] * x;
    for (int l = 1; l < degree; ++l) {
        const double next = ((2 * l + 1) * x * now - l * square * before) / (l + 1);
        sum += c[l + 1] * next;
        before = now;
        now = next;
    }
    return sum;
}

double ImageTail::both(long start, double r2, double w) const {
    const Series& c = series(start);
    const double scale = 1 / (2 * static_cast<double>(start) * thickness_);
    const double x = w * scale;
    const double square = r2 * scale * scale + x * x;
    double before = 1;
    double now = x;
    double sum = c[0];
    for (int l = 1; l < degree; ++l) {
        const double next = ((2 * l + 1) * x * now - l * square * before) / (l + 1);
        if (l % 2 == 1) sum += c[l + 1] * next;
        before = now;
        now = next;
    }
    return 2 * sum;
}

}  // namespace toft::earth
