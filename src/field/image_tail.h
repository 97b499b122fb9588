#pragma once
// The far end of a series of images, summed once and for all:
//
//   T_N(r, w) = sum over n >= N of K^(n-1) / sqrt(r^2 + (2 n h + w)^2)
//
// With rho^2 = r^2 + w^2 <= (N h)^2 every term is a series in Legendre polynomials of rho/(2 n h),
// so the sum is one short series whose coefficients depend on the soil alone. Cut after degree 24;
// what is left out is at most 2^-25 |K|^(N-1) (1 + N/24) / (N h).

#include <array>
#include <vector>

namespace toft::field {

class ImageTail {
public:
    static constexpr int degree = 24;

    /// The tail from one N on.
    class From {
    public:
        From(long start, long last, double k, double thickness);

        long start() const { return start_; }
        /// T_N for one w.
        double one(double r2, double w) const;
        /// T_N(r, w) + T_N(r, -w).
        double both(double r2, double w) const;

    private:
        long start_;
        double scale_;  ///< 1/(2 N h)
        std::array<double, degree + 1> series_{};
    };

    /// `k` the reflection, -1 < k < 1; `thickness` of the upper layer.
    ImageTail(double k, double thickness);

    /// Images from this on are too weak to count: they sum to less than 1e-10 of one image at 2 h.
    long last() const { return last_; }

    /// The tail from the smallest tabulated N with N h >= `reach`, or null when there is none or
    /// the images from N on do not count.
    const From* from(double reach) const;

private:
    double thickness_;
    long last_ = 1;
    std::vector<From> tails_;  ///< for N = 1, 2, 3, 4, 6, 8, 12, …
};

}  // namespace toft::field
