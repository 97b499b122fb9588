#include "field/strata_ground.h"

#include "field/layer_reflection.h"
#include "support/grounds.h"

#include <rapidcheck/gtest.h>

#include <cmath>

namespace toft::field {
namespace {

/// The integral over Bessel's J0 of `kernel`, which falls off like exp(-l fall), by Gauss points on
/// parts that grow until half a wave long.
template <class Kernel>
double hankel(double r, double fall, const Kernel& kernel) {
    const double place[] = {-0.960289856497536, -0.796666477413627, -0.525532409916329,
                            -0.183434642495650, 0.183434642495650,  0.525532409916329,
                            0.796666477413627,  0.960289856497536};
    const double weight[] = {0.101228536290376, 0.222381034453374, 0.313706645877887,
                             0.362683783378362, 0.362683783378362, 0.313706645877887,
                             0.222381034453374, 0.101228536290376};
    double sum = 0;
    double from = 0;
    double width = 1e-6;
    while (from * fall < 34) {
        for (int i = 0; i < 8; ++i) {
            const double l = from + width / 2 * (1 + place[i]);
            sum += width / 2 * weight[i] * ::j0(l * r) * kernel(l);
        }
        from += width;
        width = std::min({width * 1.3, 1.5 / r, 1.0});
    }
    return sum;
}

/// Potential of a point source by the integral of the exact kernel; the direct part in closed form.
double exact(const Strata& soil, double r, double z, double c) {
    if (z < c) return exact(soil, r, c, z);
    std::vector<double> depth = boundaries(soil);
    const std::size_t count = depth.size() + 1;
    depth.insert(depth.begin(), 0);
    depth.push_back(1e9);
    std::size_t i = 0;
    while (c > depth[i + 1]) ++i;
    std::size_t j = i;
    while (z > depth[j + 1]) ++j;
    const double t = depth[i];
    const double b = depth[j + 1];
    const double fall =
        std::min({i == j ? 1e9 : z - c, z + c - 2 * t, j + 1 == count ? 1e9 : 2 * b - z - c});
    const auto kernel = [&](double l) {
        const LayerReflection f = reflections(soil, l)[pair_number(i, j, count)];
        double g = f.above * std::exp(-l * (z + c - 2 * t));
        if (i != j) g += f.through * std::exp(-l * (z - c));
        if (j + 1 == count) return g;
        g += f.below * std::exp(-l * (2 * b - z - c));
        g += f.both * std::exp(-l * (2 * (b - t) - z + c));
        return i == j ? g + f.both * std::exp(-l * (2 * (b - t) + z - c)) : g;
    };
    const double rho = (i + 1 < count ? soil.layers[i].resistivity : soil.deepest).number();
    const double direct = i == j ? 1 / std::sqrt(r * r + (z - c) * (z - c)) : 0;
    return rho / (4 * pi) * (direct + hankel(r, fall, kernel));
}

TEST(StrataGround, IsTheIntegralOfTheExactKernel) {
    for (const Strata& soil :
         {stack({{1000, 0.5}, {100, 1.5}}, 300), stack({{100, 0.6}, {400, 1.2}}, 50),
          stack({{300, 0.4}, {60, 3}}, 1000),
          stack({{200, 0.3}, {50, 1}, {400, 2}, {80, 5}}, 150)}) {
        const StrataGround ground(soil);
        for (double r : {0.1, 0.7, 3.0, 20.0, 100.0}) {
            for (double c : {0.15, 0.9, 2.5}) {
                for (double z : {0.0, 0.22, 1.2, 2.9}) {
                    const double expected = exact(soil, r, z, c);
                    EXPECT_NEAR(ground.between(point_bar(r, z), point_bar(0, c)) / expected, 1,
                                1e-6)
                        << r << " m, " << z << " from " << c;
                }
            }
        }
    }
}

TEST(StrataGround, StaysWithinItsErrorHoweverMuchLayersDiffer) {
    for (const Strata& soil :
         {stack({{10000, 0.5}, {1, 2}}, 10000), stack({{10, 1}, {10000, 0.1}}, 10),
          stack({{5000, 0.3}, {20, 1}}, 3)}) {
        const StrataGround ground(soil);
        for (double r : {0.3, 5.0, 300.0}) {
            for (double c : {0.2, 1.05, 3.0}) {
                const double z = 0.22;
                const double rho = soil.layers[0].resistivity.number();  // z lies in the first
                const double apart = std::sqrt(r * r + (z - c) * (z - c));
                EXPECT_NEAR(ground.between(point_bar(r, z), point_bar(0, c)), exact(soil, r, z, c),
                            ground.error() * rho / (4 * pi * apart) * (1 + 1e-6) + 1e-9);
            }
        }
    }
}

TEST(StrataGround, OfEqualLayersIsTheExactSeriesOfTwo) {
    for (const auto& two : {layers(100, 300, 1.2), layers(800, 40, 0.5), layers(100, 100, 1)}) {
        const double h = two.thickness.number();
        const double upper = two.upper.number();
        const double lower = two.lower.number();
        const Ground expected(two);
        for (const StrataGround& ground :
             {StrataGround(strata(two)),
              StrataGround(stack({{upper, h / 3}, {upper, h * 2 / 3}}, lower)),
              StrataGround(stack({{upper, h}, {lower, 2}}, lower)),
              StrataGround(
                  stack({{upper, h / 2}, {upper, h / 2}, {lower, 1}, {lower, 2}}, lower))}) {
            for (double r : {0.2, 1.0, 8.0, 60.0}) {
                for (double z : {0.0, 0.3, 1.1, 2.7}) {
                    for (double c : {0.1, 0.45, 1.9}) {
                        EXPECT_NEAR(ground.between(point_bar(r, z), point_bar(0, c)) /
                                        expected.between(point_bar(r, z), point_bar(0, c)),
                                    1, 3e-6)
                            << upper << " on " << lower << ": " << r << " " << z << " " << c;
                    }
                }
            }
        }
    }
}

TEST(StrataGround, LetsPotentialAndCurrentThroughEachBoundary) {
    const StrataGround ground(stack({{1000, 0.5}, {100, 1.5}}, 300));
    const double step = 1e-4;
    const double rho[] = {1000, 100, 300};
    for (double c : {0.3, 1.2, 2.6}) {
        const auto v = [&](double z) { return ground.between(point_bar(0.8, z), point_bar(0, c)); };
        for (int b = 0; b < 2; ++b) {
            const double h = b == 0 ? 0.5 : 2.0;
            EXPECT_NEAR(v(h - 1e-9) / v(h + 1e-9), 1, 1e-6);
            const double above = (v(h - step) - v(h - 2 * step)) / step / rho[b];
            const double below = (v(h + 2 * step) - v(h + step)) / step / rho[b + 1];
            EXPECT_NEAR(above / below, 1, 5e-3) << c << " at " << h;
        }
        EXPECT_NEAR((v(step) - v(0)) / v(0), 0, 1e-6) << "the surface lets current out";
    }
}

RC_GTEST_PROP(StrataGround, IsReciprocalAndTheMeanOfWhatPointsFeel, ()) {
    const auto number = [](int low, int high) { return *rc::gen::inRange(low, high) / 100.0; };
    const StrataGround ground(
        stack({{number(1000, 90000), 1}, {number(1000, 90000), 1}}, number(1000, 90000)));
    const auto any = [&](double x) {
        const double slant = number(0, 157);
        return Bar{{x, 0, *rc::gen::inRange(0, 3) + number(20, 80)},
                   {std::sin(slant), 0, std::cos(slant)},
                   number(2, 19),
                   0.005};
    };
    const Bar a = any(0);
    const Bar b = any(number(60, 500));
    const double there = ground.between(a, b);
    RC_ASSERT(std::fabs(there / ground.between(b, a) - 1) < 1e-6);
    double sum = 0;
    const int count = 20;
    for (int i = 0; i < count * count; ++i) {
        Bar p = a;
        Bar q = b;
        p.middle = a.middle + a.half * ((2 * (i % count) + 1.0) / count - 1) * a.along;
        q.middle = b.middle + b.half * ((2 * (i / count) + 1.0) / count - 1) * b.along;
        p.half = q.half = 0;
        sum += ground.between(p, q);
    }
    RC_ASSERT(std::fabs(there / (sum / count / count) - 1) < 2e-3);
}

}  // namespace
}  // namespace toft::field
