#include "field/bar.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>

namespace toft::field {
namespace {

Bar bar(const Vector& from, const Vector& to, double radius = 1e-3) {
    const Vector d = to - from;
    const double length = std::sqrt(dot(d, d));
    return {0.5 * (from + to), (1 / length) * d, length / 2, radius};
}

Bar point(const Vector& at) { return {at, {0, 0, 1}, 0, 0}; }

/// The mean of 1/distance summed over pieces of both bars.
double summed(const Bar& a, const Bar& b, int count = 400) {
    double sum = 0;
    for (int i = 0; i < count; ++i) {
        for (int j = 0; j < count; ++j) {
            const Vector p = a.middle + a.half * ((2 * i + 1.0) / count - 1) * a.along;
            const Vector q = b.middle + b.half * ((2 * j + 1.0) / count - 1) * b.along;
            const Vector d = p - q;
            sum += 1 / std::sqrt(dot(d, d));
        }
    }
    return sum / count / count;
}

TEST(Bar, ParallelBarsAreExact) {
    const Bar a = bar({0, 0, 0}, {0, 0, 1});
    for (const Bar& b : {bar({0.2, 0, 0.3}, {0.2, 0, 0.9}), bar({1, 1, 2}, {1, 1, 1}),
                         bar({0, 0, 1.5}, {0, 0, 3}), bar({3, 0, 0}, {3, 0, 1})}) {
        EXPECT_NEAR(mean_inverse(a, b) / summed(a, b), 1, 1e-4);
    }
}

TEST(Bar, OnItselfIsTheKnownIntegral) {
    const double length = 0.5;
    const double r = 0.01;
    const double x = length / r;
    const double expected = 2 / length * (std::asinh(x) - std::sqrt(1 + 1 / (x * x)) + 1 / x);
    const Bar a = bar({0, 0, 0}, {0, 0.3, 0.4}, r);
    EXPECT_NEAR(mean_inverse(a, a) / expected, 1, 1e-10);
}

TEST(Bar, CrossedBarsAreNearlyExact) {
    const Bar a = bar({0, 0, 0}, {1, 0, 0}, 1e-3);
    for (const Bar& b : {bar({0.5, 0.2, -0.5}, {0.5, 0.2, 0.5}, 1e-3),
                         bar({1.1, 0.1, 0}, {1.5, 1, 0.4}, 1e-3), bar({2, 2, 2}, {3, 2, 2.5})}) {
        EXPECT_NEAR(mean_inverse(a, b) / summed(a, b), 1, 1e-3);
    }
    const Bar corner = bar({1, 0, 0}, {1, 1, 0}, 1e-3);
    EXPECT_NEAR(mean_inverse(a, corner) / summed(a, corner, 3000), 1, 2e-3);
}

TEST(Bar, FromAPointIsTheLogarithm) {
    const Bar a = bar({0, 0, 0}, {0, 0, 2});
    const double expected = (std::asinh(1.5 / 0.4) + std::asinh(0.5 / 0.4)) / 2;
    EXPECT_NEAR(mean_inverse(point({0.4, 0, 0.5}), a), expected, 1e-12);
    EXPECT_NEAR(mean_inverse(a, point({0.4, 0, 0.5})), expected, 1e-12);
    EXPECT_EQ(mean_inverse(point({3, 0, 4}), point({0, 0, 0})), 0.2);
}

TEST(Bar, SeenFromInsideTheMetalIsSeenFromItsSurface) {
    const Bar a = bar({0, 0, 0}, {0, 0, 2}, 0.05);
    EXPECT_EQ(mean_inverse(point({0, 0, 1}), a), mean_inverse(point({0.05, 0, 1}), a));
    EXPECT_TRUE(std::isfinite(mean_inverse(a, a)));
}

RC_GTEST_PROP(Bar, NearAndFarMeetAndBothWaysAreEqual, ()) {
    const auto place = [] {
        const auto number = [] { return *rc::gen::inRange(-1000, 1001) / 1000.0; };
        return Vector{number(), number(), number()};
    };
    const Vector from = place();
    const Vector to = place();
    RC_PRE(dot(to - from, to - from) > 0.01);
    const Bar a = bar(from, to);
    Bar b = bar(place(), place() + Vector{0.1, 2, 0.1});
    const Vector direction{0.6, 0.64, 0.48};
    const double length = 2 * std::max(a.half, b.half);
    b.middle = a.middle + 6.0001 * length * direction;
    const double far = mean_inverse(a, b);
    RC_ASSERT(std::fabs(far / mean_inverse(b, a) - 1) < 1e-12);
    b.middle = a.middle + 5.9999 * length * direction;
    const double near = mean_inverse(a, b);
    RC_ASSERT(std::fabs(near / mean_inverse(b, a) - 1) < 1e-12);
    RC_ASSERT(std::fabs(near / far * 5.9999 / 6.0001 - 1) < 1.5e-4);
}

}  // namespace
}  // namespace toft::field
