#include "field/image_tail.h"

#include <gtest/gtest.h>

#include <cmath>

namespace toft::field {
namespace {

/// The tail term by term.
double summed(double k, double h, long start, double r, double w) {
    double sum = 0;
    double power = std::pow(k, static_cast<double>(start - 1));
    for (long n = start; n < start + 400000 && std::fabs(power) > 1e-18; ++n, power *= k) {
        const double u = 2 * static_cast<double>(n) * h + w;
        sum += power / std::sqrt(r * r + u * u);
    }
    return sum;
}

TEST(ImageTail, IsTheSumOfItsTerms) {
    for (double k : {-0.98, -0.5, 0.1, 0.5, 0.9, 0.995}) {
        const double h = 0.7;
        const ImageTail tail(k, h);
        for (double reach : {0.1, 0.5, 0.9, 2.0, 3.9, 20.0}) {
            const ImageTail::From* from = tail.from(reach);
            if (!from) {
                EXPECT_GT(reach / h, static_cast<double>(tail.last()) / 2) << k;
                continue;
            }
            for (double cosine : {-1.0, -0.6, 0.0, 0.8, 1.0}) {
                const double w = reach * cosine;
                const double r = reach * std::sqrt(1 - cosine * cosine);
                const double expected = summed(k, h, from->start(), r, w);
                const double other = summed(k, h, from->start(), r, -w);
                const double first = std::pow(std::fabs(k), from->start() - 1) /
                                     (static_cast<double>(from->start()) * h);
                EXPECT_NEAR(from->one(r * r, w), expected, 2e-7 * first + 1e-9);
                EXPECT_NEAR(from->both(r * r, w), expected + other, 4e-7 * first + 2e-9);
            }
        }
    }
}

TEST(ImageTail, BeginsAtTheSmallestReachThatCovers) {
    const ImageTail tail(0.9, 2);
    EXPECT_EQ(tail.from(0.1)->start(), 1);
    EXPECT_EQ(tail.from(2)->start(), 1);
    EXPECT_EQ(tail.from(2.1)->start(), 2);
    EXPECT_EQ(tail.from(5.9)->start(), 3);
    EXPECT_EQ(tail.from(7)->start(), 4);
    EXPECT_EQ(tail.from(9)->start(), 6);
    EXPECT_EQ(tail.from(1e4), nullptr);
}

TEST(ImageTail, HasNoneWhereTheBoundaryMirrorsNothing) {
    const ImageTail tail(0, 1);
    EXPECT_EQ(tail.last(), 1);
    EXPECT_EQ(tail.from(0.1), nullptr);
}

}  // namespace
}  // namespace toft::field
