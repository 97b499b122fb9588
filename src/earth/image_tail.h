#pragma once
// The far end of a series of images, summed once and for all:
//
//   T_N(r, w) = sum over n >= N of K^(n-1) / sqrt(r^2 + (2 n h + w)^2)
//
// With rho^2 = r^2 + w^2 <= (N h)^2 every term is a series in Legendre polynomials of rho/(2 n h),
// so the sum is one short series whose coefficients depend on the soil alone. Cut after degree 28;
// what is left out is at most 2^-29 |K|^(N-1) (1 + N/28) / (N h).

#include <array>
#include <vector>

namespace toft::earth {

class ImageTail {
public:
    static constexpr int degree = 28;

    /// `k` the reflection, -1 < k < 1; `thickness` of the upper layer.
    ImageTail(double k, double thickness);

    /// Images from this on are too weak to count: they sum to less than 1e-10 of one image at 2 h.
    long last() const { return last_; }

    /// The smallest tabulated N (a power of two) with N h >= `reach`, or 0 when there is none or
    /// the images from N on do not count.
    long start_for(double reach) const;

    /// T_N for one w.
    double one(long start, double r2, double w) const;
    /// T_N(r, w) + T_N(r, -w).
    double both(long start, double r2, double w) const;

private:
    using Series = std::array<double, degree + 1>;

    const Series& series(long start) const;

    double thickness_;
    long last_ = 1;
    std::vector<Series> series_;  ///< for N = 1, 2, 4, …
};

}  // namespace toft::earth
