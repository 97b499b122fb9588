#include "field/ground.h"

#include "support/grounds.h"

#include <rapidcheck/gtest.h>

#include <cmath>

namespace toft::field {
namespace {

/// A short upright or slanting bar about a place.
Bar bar(double x, double depth, double half = 0.05, double slant = 0) {
    return {{x, 0, depth}, {std::sin(slant), 0, std::cos(slant)}, half, 0.005};
}

/// Images one by one, for points: the sums as the text books print them.
double by_images(const LayeredSoil& soil, double r, double z, double c) {
    const double k = reflection(soil);
    const double h = soil.thickness.number();
    const auto one = [&](double u) { return 1 / std::sqrt(r * r + u * u); };
    const bool z_above = z <= h;
    const bool c_above = c <= h;
    double sum = 0;
    double power = 1;
    for (int n = 0; n < 200000 && std::fabs(power) > 1e-16; ++n, power *= k) {
        const double u = 2 * n * h;
        if (z_above && c_above && n == 0) sum += one(z - c) + one(z + c);
        if (z_above && c_above && n > 0) {
            sum += power * (one(u + z + c) + one(u + z - c) + one(u - z + c) + one(u - z - c));
        }
        if (z_above != c_above) {
            sum += (1 + k) * power * (one(u + z + c) + one(u + std::fabs(z - c)));
        }
        if (!z_above && !c_above) sum += (1 - k * k) * power * one(u + z + c);
    }
    if (!z_above && !c_above) sum += one(z - c) - k * one(z + c - 2 * h);
    return sum * (z_above || c_above ? soil.upper : soil.lower).number() / (4 * pi);
}

TEST(Ground, IsTheTextBooksSumOfImages) {
    for (const auto& soil :
         {layers(100, 300, 1), layers(300, 20, 0.5), layers(50, 5000, 2), layers(2000, 10, 1)}) {
        const Ground ground(soil);
        for (double r : {0.3, 2.0, 15.0, 80.0}) {
            for (double z : {0.0, 0.4, 2.5}) {
                for (double c : {0.1, 0.45, 3.0}) {
                    const double expected = by_images(soil, r, z, c);
                    EXPECT_NEAR(ground.between(point_bar(r, z), point_bar(0, c)) / expected, 1,
                                2e-6)
                        << r << " " << z << " " << c << " of " << soil.upper.number();
                }
            }
        }
    }
}

TEST(Ground, LetsPotentialAndCurrentThroughTheBoundary) {
    const auto soil = layers(100, 400, 1);
    const Ground ground(soil);
    const double step = 1e-4;
    for (double c : {0.5, 1.7}) {
        const auto v = [&](double z) { return ground.between(point_bar(0.8, z), point_bar(0, c)); };
        EXPECT_NEAR(v(1 - 1e-9) / v(1 + 1e-9), 1, 1e-6);
        const double above = (v(1 - step) - v(1 - 2 * step)) / step / 100;
        const double below = (v(1 + 2 * step) - v(1 + step)) / step / 400;
        EXPECT_NEAR(above / below, 1, 5e-3) << c;
        EXPECT_NEAR((v(step) - v(0)) / v(0), 0, 1e-6) << "the surface lets current out";
    }
}

TEST(Ground, UniformIsTwoEqualLayers) {
    const Ground uniform(plain_soil());
    const Ground nearly(layers(100, 100 * (1 + 1e-9), 0.7));
    for (double a : {0.2, 0.6, 1.5}) {
        for (double b : {0.3, 0.65, 2.0}) {
            EXPECT_NEAR(
                uniform.between(bar(1, a), bar(0, b)) / nearly.between(bar(1, a), bar(0, b)), 1,
                1e-7);
        }
    }
}

RC_GTEST_PROP(Ground, IsReciprocal, ()) {
    const auto number = [](int low, int high) { return *rc::gen::inRange(low, high) / 100.0; };
    const auto soil =
        layers(*rc::gen::inRange(5, 3000), *rc::gen::inRange(5, 3000), number(20, 300));
    const Ground ground(soil);
    const double h = soil.thickness.number();
    const auto any = [&](double x) {
        const double half = number(2, 10);
        const double depth = number(0, 500) + half;
        const bool crosses = std::fabs(depth - h) < half;
        return bar(x, crosses ? depth + 2 * half : depth, half, number(0, 157));
    };
    const Bar a = any(0);
    const Bar b = any(number(-400, 400));
    const double there = ground.between(a, b);
    const double back = ground.between(b, a);
    RC_ASSERT(there > 0);
    RC_ASSERT(std::fabs(there / back - 1) < 1e-6);
}

RC_GTEST_PROP(Ground, IsTheMeanOverTheBarsOfWhatPointsFeel, ()) {
    const auto soil = layers(*rc::gen::inRange(5, 3000), *rc::gen::inRange(5, 3000), 1);
    const Ground ground(soil);
    const double x = *rc::gen::inRange(60, 600) / 100.0;
    const double above = *rc::gen::inRange(25, 75) / 100.0;
    const double depth = *rc::gen::element(above, 1 + above);
    const Bar a = bar(x, depth, 0.2, 0.3);
    const Bar b = bar(0, 0.5, 0.2, -0.4);
    double sum = 0;
    const int count = 20;
    for (int i = 0; i < count * count; ++i) {
        const double u = a.half * ((2 * (i % count) + 1.0) / count - 1);
        const double v = b.half * ((2 * (i / count) + 1.0) / count - 1);
        const Vector p = a.middle + u * a.along;
        const Vector q = b.middle + v * b.along;
        sum += by_images(soil, std::fabs(p.x - q.x), p.z, q.z);
    }
    // Where images cancel, what each of them errs by (1e-4, bar.h) counts against the first.
    const double mean = sum / count / count;
    const double first =
        (above == depth ? soil.upper : least(soil.upper, soil.lower)).number() / (4 * pi * x);
    RC_ASSERT(std::fabs(ground.between(a, b) - mean) < 2e-3 * mean + 1e-4 * first);
}

}  // namespace
}  // namespace toft::field
