#include "field/ground.h"

#include "base/pi.h"

#include <algorithm>
#include <cmath>

namespace toft::field {

namespace {

/// Bars shorter than this share of the distance to the first image of a tail see it straight: an
/// error of at most 4e-4 of the tail's bend.
constexpr double straight = 0.05;

/// The bar at depth `sign` z + `shift`.
Bar moved(const Bar& bar, double sign, double shift) {
    Bar image = bar;
    image.middle.z = sign * bar.middle.z + shift;
    image.along.z = sign * bar.along.z;
    return image;
}

Bar mirrored(const Bar& bar) { return moved(bar, -1, 0); }

}  // namespace

Ground::Ground(const LayeredSoil& soil)
    : upper_(soil.upper.number()),
      lower_(soil.lower.number()),
      thickness_(soil.thickness.number()),
      k_(reflection(soil)),
      uniform_(k_ == 0),
      tail_(k_, thickness_) {}

double Ground::between(const Bar& a, const Bar& b) const {
    const double direct = mean_inverse(a, b);
    if (uniform_) return upper_ / (4 * pi) * (direct + mean_inverse(a, mirrored(b)));
    const bool a_above = in_upper(a);
    const bool b_above = in_upper(b);
    if (!a_above && !b_above) {
        const double h2 = 2 * thickness_;
        return lower_ / (4 * pi) *
               (direct - k_ * mean_inverse(a, moved(b, -1, h2)) +
                (1 - k_ * k_) * row_sum(a, b, {1, 1, -h2, false}));
    }
    // A point of the surface sees the rows that differ in the sign of its depth alike.
    if (a.half == 0 && a.middle.z == 0) {
        const double rows = row_sum(a, b, {1, 1, 0, b_above});
        return upper_ * (b_above ? 1 : 1 + k_) / (2 * pi) * (direct + k_ * rows);
    }
    const double first = direct + mean_inverse(a, mirrored(b));
    if (a_above && b_above) {
        return upper_ / (4 * pi) *
               (first + k_ * (row_sum(a, b, {1, 1, 0, true}) + row_sum(a, b, {1, -1, 0, true})));
    }
    const Row slanted = a_above ? Row{-1, 1, 0, false} : Row{1, -1, 0, false};
    return upper_ * (1 + k_) / (4 * pi) *
           (first + k_ * (row_sum(a, b, {1, 1, 0, false}) + row_sum(a, b, slanted)));
}

double Ground::row_sum(const Bar& a, const Bar& b, const Row& row) const {
    const Vector d = a.middle - b.middle;
    const double w = row.base + row.up * a.middle.z + row.down * b.middle.z;
    const double reach = std::sqrt(d.x * d.x + d.y * d.y + w * w) + a.half + b.half;
    const ImageTail::From* rest = tail_.from(reach);
    const long end = rest ? rest->start() : tail_.last();
    const double sign = -row.up * row.down;
    double power = 1;
    double sum = 0;
    for (long n = 1; n < end; ++n, power *= k_) {
        const double away = 2 * static_cast<double>(n) * thickness_ + row.base;
        double images = mean_inverse(a, moved(b, sign, -row.up * away));
        if (row.both) images += mean_inverse(a, moved(b, sign, row.up * away));
        sum += power * images;
    }
    return rest ? sum + mean_tail(a, b, row, *rest) : sum;
}

double Ground::mean_tail(const Bar& a, const Bar& b, const Row& row,
                         const ImageTail::From& tail) const {
    const auto at = [&](double on_a, double on_b) {
        const Vector p = a.middle + on_a * a.along;
        const Vector q = b.middle + on_b * b.along;
        const double x = p.x - q.x;
        const double y = p.y - q.y;
        const double w = row.base + row.up * p.z + row.down * q.z;
        const double r2 = x * x + y * y;
        return row.both ? tail.both(r2, w) : tail.one(r2, w);
    };
    // The tail bends over the distance of its first image; short bars see it straight.
    const double first = 2 * static_cast<double>(tail.start()) * thickness_;
    if (a.half + b.half < straight * first) return at(0, 0);
    const double ga = a.half / std::sqrt(3.0);
    const double gb = b.half / std::sqrt(3.0);
    return (at(ga, gb) + at(-ga, -gb) + at(ga, -gb) + at(-ga, gb)) / 4;
}

}  // namespace toft::field
