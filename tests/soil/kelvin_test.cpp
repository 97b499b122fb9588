#include "soil/kelvin.h"

#include <gtest/gtest.h>

#include <cmath>

namespace toft::soil {
namespace {

TEST(Kelvin, MeetsRememberedFiguresOfAbramowitzAndStegun) {
    // Table 9.12, as remembered, not seen.
    EXPECT_NEAR(kelvin(1).ker, 0.2867062087, 1e-9);
    EXPECT_NEAR(kelvin(1).kei, -0.4949946365, 1e-9);
}

TEST(Kelvin, IsTheSameOnEitherSideOfTheChangeOfMethod) {
    const double below = 5 * (1 - 1e-12);
    EXPECT_NEAR(kelvin(below).ker, kelvin(5).ker, 1e-12);
    EXPECT_NEAR(kelvin(below).kei, kelvin(5).kei, 1e-12);
}

TEST(Kelvin, ObeysItsDifferentialEquation) {
    // x^2 w'' + x w' = i x^2 w for w = ker + i kei.
    for (double x : {0.3, 1.0, 3.0, 4.5, 5.5, 9.0}) {
        const double h = 1e-3;
        const Kelvin a = kelvin(x - h), b = kelvin(x), c = kelvin(x + h);
        const auto side = [&](double p, double q, double r) {
            return x * x * (p - 2 * q + r) / (h * h) + x * (r - p) / (2 * h);
        };
        const double size = x * x * std::hypot(b.ker, b.kei);
        EXPECT_NEAR(side(a.ker, b.ker, c.ker) / size, -x * x * b.kei / size, 1e-4) << x;
        EXPECT_NEAR(side(a.kei, b.kei, c.kei) / size, x * x * b.ker / size, 1e-4) << x;
    }
}

TEST(Kelvin, DiesAwayAndGrowsLikeALogarithmNearNought) {
    EXPECT_NEAR(kelvin(1e-6).ker, std::log(2e6) - 0.5772156649, 1e-9);
    EXPECT_NEAR(kelvin(1e-6).kei, -std::atan(1.0), 1e-9);
    const double x = 40;
    const double size = std::sqrt(2 * std::atan(1.0) / x) * std::exp(-x / std::sqrt(2.0));
    EXPECT_NEAR(std::hypot(kelvin(x).ker, kelvin(x).kei) / size, 1, 0.01);
}

}  // namespace
}  // namespace toft::soil
