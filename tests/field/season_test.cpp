#include "field/season.h"

#include "support/grounds.h"

#include <rapidcheck/gtest.h>

#include <cmath>

namespace toft::field {
namespace {

Strata covered(const Strata& soil, double depth, double factor) {
    auto result = with_crust(soil, {metres(depth), factor});
    if (!result) throw std::runtime_error(result.error().front().says);
    return *result;
}

std::string told(const Strata& soil) {
    std::string text;
    for (const Stratum& layer : soil.layers) {
        text += std::to_string(std::lround(layer.resistivity.number())) + "x" +
                std::to_string(std::lround(layer.thickness.number() * 100)) + " ";
    }
    return text + std::to_string(std::lround(soil.deepest.number()));
}

TEST(Season, CrustMultipliesWhatLiesWithinItsDepth) {
    const Strata soil = stack({{100, 0.4}, {200, 1.0}}, 50);
    EXPECT_EQ(told(covered(soil, 0.3, 4)), "400x30 100x10 200x100 50");
    EXPECT_EQ(told(covered(soil, 0.4, 4)), "400x40 200x100 50");
    EXPECT_EQ(told(covered(soil, 0.6, 4)), "400x40 800x20 200x80 50");
    EXPECT_EQ(told(covered(soil, 2.0, 4)), "400x40 800x100 200x60 50");
    EXPECT_EQ(told(covered(stack({}, 100), 0.5, 10)), "1000x50 100");
}

TEST(Season, EndsThatRoundingMovedLeaveNoSliver) {
    EXPECT_EQ(told(covered(stack({{100, 0.3}, {200, 0.5}}, 50), 0.8, 4)), "400x30 800x50 50");
    EXPECT_EQ(told(covered(stack({{100, 0.1}, {200, 0.2}}, 50), 0.3, 4)), "400x10 800x20 50");
}

TEST(Season, NoDepthOrNoFactorChangesNothing) {
    const Strata soil = stack({{100, 0.4}, {200, 1.0}}, 50);
    EXPECT_EQ(told(covered(soil, 0, 4)), told(soil));
    EXPECT_EQ(told(covered(soil, 0.6, 1)), told(soil));
}

TEST(Season, CrustsThatMakeNoSenseAreRefused) {
    const Strata soil = stack({{100, 0.4}}, 50);
    for (const Crust& crust :
         {Crust{metres(-0.1), 2}, Crust{metres(NAN), 2}, Crust{metres(0.5), 0.5},
          Crust{metres(0.5), NAN}, Crust{metres(0.5), INFINITY}, Crust{metres(0.5), 1e5}}) {
        EXPECT_FALSE(with_crust(soil, crust));
    }
    EXPECT_FALSE(with_crust(stack({{0, 1}}, 50), {metres(0.5), 2}));
}

// Own computation of another two-layer program (80 to 160 pieces a rod, 0.4 %), no outside source:
// rods of 16 mm in 100 ohm metres under a crust. Finite elements: tests/elements/strata_test.cpp.
TEST(Season, CrustCostsRodsWhatAnotherProgramFound) {
    struct Row {
        double depth, factor, ohms[3];  // of 1.2, 2.4 and 3.6 m
    };
    for (const Row& row : {Row{0, 1, {70.8, 40.1, 28.5}}, Row{0.5, 4, {95.7, 46.2, 31.3}},
                           Row{0.5, 10, {103.2, 47.6, 31.9}}, Row{0.5, 30, {107.0, 48.3, 32.2}},
                           Row{1.0, 4, {156.5, 54.7, 34.7}}}) {
        const Strata soil = covered(stack({}, 100), row.depth, row.factor);
        for (int i = 0; i < 3; ++i) {
            const double r = joined(soil, {rod(0, 0, 1.2 * (i + 1), 0.016)}, 0.05, 24);
            EXPECT_NEAR(r / row.ohms[i], 1, 0.008) << row.depth << " m of x" << row.factor;
        }
    }
}

RC_GTEST_PROP(Season, CrustNeverHelps, ()) {
    const auto number = [](int low, int high) { return *rc::gen::inRange(low, high) / 10.0; };
    const Strata soil =
        stack({{number(200, 5000), number(3, 20)}, {number(200, 5000), number(3, 20)}},
              number(200, 5000));
    const double depth = number(1, 12);
    const double factor = number(11, 100);
    const auto r = [&](const Strata& ground) {
        return joined(ground, {rod(0, 0, 1.8, 0.016)}, 0.15, 12);
    };
    const double before = r(soil);
    const double after = r(covered(soil, depth, factor));
    RC_ASSERT(after > before);
    RC_ASSERT(after < before * factor);
    RC_ASSERT(r(covered(soil, depth + 0.3, factor)) > after * 0.997);
}

}  // namespace
}  // namespace toft::field
