// Points that fill a cube evenly, against the terms and integrals everybody knows.

#include "tolerance/halton.h"

#include "base/pi.h"

#include <gtest/gtest.h>

#include <cmath>
#include <random>

namespace toft::tolerance {
namespace {

TEST(Halton, TheFirstTermsAreThoseOfVanDerCorput) {
    // Digits mirrored at the point, J. G. van der Corput, Verteilungsfunktionen, 1935: base 2 by
    // hand, base 3 by hand.
    const double two[] = {0.5, 0.25, 0.75, 0.125, 0.625, 0.375, 0.875, 0.0625};
    const double three[] = {1. / 3, 2. / 3, 1. / 9, 4. / 9, 7. / 9, 2. / 9, 5. / 9, 8. / 9};
    Halton points(2);
    for (std::size_t n = 0; n < 8; ++n) {
        const auto& point = points.next();
        EXPECT_DOUBLE_EQ(point[0], two[n]);
        EXPECT_DOUBLE_EQ(point[1], three[n]);
        EXPECT_DOUBLE_EQ(mirrored(n + 1, 2), two[n]);
    }
}

TEST(Halton, SteppingIsMirroring) {
    Halton points(primes.size());
    for (std::size_t n = 1; n <= 20000; ++n) {
        const auto& point = points.next();
        if (n % 997 != 0) continue;
        for (std::size_t d = 0; d < primes.size(); ++d) {
            EXPECT_NEAR(point[d], mirrored(n, primes[d]), 1e-11);
        }
    }
}

TEST(Halton, AShiftTurnsEachDirectionRoundAndStaysWithin) {
    Halton plain(3);
    Halton shifted(3, 5);
    const std::vector<double> first = plain.next();
    const std::vector<double> other = shifted.next();
    const double by = other[1] - first[1];
    for (int n = 0; n < 500; ++n) {
        const double a = plain.next()[1];
        const double b = shifted.next()[1];
        const double turned = a + by - std::floor(a + by);
        EXPECT_NEAR(b, turned, 1e-9);
        EXPECT_GE(b, 0);
        EXPECT_LT(b, 1);
    }
}

/// The part of `n` points of a cube of `directions` in which `inside` holds.
template <class Inside>
double part(std::size_t n, std::size_t directions, const Inside& inside) {
    Halton points(directions);
    std::size_t in = 0;
    for (std::size_t k = 0; k < n; ++k) in += inside(points.next()) ? 1 : 0;
    return static_cast<double>(in) / static_cast<double>(n);
}

TEST(Halton, KnownVolumesAreFoundBetterThanByChance) {
    constexpr std::size_t n = 20000;
    const double quarter = part(n, 2, [](const auto& p) { return std::hypot(p[0], p[1]) < 1; });
    EXPECT_NEAR(quarter, pi / 4, 1e-3);
    const double simplex = part(n, 4, [](const auto& p) { return p[0] + p[1] + p[2] + p[3] < 1; });
    EXPECT_NEAR(simplex, 1.0 / 24, 1e-3);
    double errors = 0;
    for (unsigned seed = 0; seed < 20; ++seed) {
        std::mt19937 random(seed);
        std::uniform_real_distribution<double> any(0, 1);
        std::size_t in = 0;
        for (std::size_t k = 0; k < n; ++k) in += std::hypot(any(random), any(random)) < 1 ? 1 : 0;
        errors += std::abs(static_cast<double>(in) / n - pi / 4) / 20;
    }
    EXPECT_LT(std::abs(quarter - pi / 4), errors);
}

TEST(Halton, APolynomialHasItsIntegral) {
    Halton points(3);
    double sum = 0;
    constexpr int n = 1 << 15;
    for (int k = 0; k < n; ++k) {
        const auto& p = points.next();
        sum += p[0] * p[1] * p[1] * p[2];
    }
    EXPECT_NEAR(sum / n, 1.0 / 12, 5e-4);
}

}  // namespace
}  // namespace toft::tolerance
