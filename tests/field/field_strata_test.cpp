// Laws that fields keep in any number of layers.

#include "field/field.h"

#include "support/grounds.h"

#include <rapidcheck/gtest.h>

#include <cmath>

namespace toft::field {
namespace {

using Layers = std::vector<std::pair<double, double>>;

double number(int low, int high) { return *rc::gen::inRange(low, high) / 10.0; }

Layers any_layers() {
    Layers layers;
    const int count = *rc::gen::inRange(2, 5);
    for (int i = 0; i < count; ++i) layers.push_back({number(100, 20000), number(2, 25)});
    return layers;
}

TEST(FieldStrata, OfTwoLayersIsTheExactField) {
    const auto wires = three_electrodes(2.4);
    const Field expected = field_of(layers(100, 400, 1), wires);
    const Field same = field_of(stack({{100, 0.4}, {100, 0.6}}, 400), wires);
    // A little different in the middle: fitted images instead of the series.
    const Field nearly = field_of(stack({{100, 1.0}, {400, 2.0}}, 400 * (1 + 1e-9)), wires);
    for (int i = 0; i < 3; ++i) {
        for (int j = 0; j < 3; ++j) {
            EXPECT_EQ(same.resistance(i, j), expected.resistance(i, j));
            EXPECT_NEAR(nearly.resistance(i, j) / expected.resistance(i, j), 1, 2e-3);
        }
    }
}

TEST(FieldStrata, IsReciprocalAndEquipotential) {
    const Field field =
        field_of(stack({{800, 0.4}, {100, 1.2}, {40, 0.5}}, 300), three_electrodes(2.4), 0.1, 24);
    for (int i = 0; i < 3; ++i) {
        for (int j = 0; j < 3; ++j) {
            EXPECT_EQ(field.resistance(i, j), field.resistance(j, i));
            EXPECT_GT(field.resistance(i, j), ohms(0));
            if (i == j) continue;
            EXPECT_LT(field.resistance(i, j), field.resistance(i, i));
        }
    }
    const Driven driven = field.driven({amperes(2), amperes(-1), amperes(0.5)});
    for (double z : {0.2, 0.7, 1.2, 1.85, 2.25}) {
        EXPECT_NEAR(driven.potential(spot(0.008, 0, z)) / driven.rises()[0], 1, 0.04) << z;
    }
}

TEST(FieldStrata, ErrorFallsWithRefinement) {
    const Strata soil = stack({{1000, 0.5}, {100, 1.2}}, 400);
    const auto r = [&](int pieces) { return joined(soil, {rod(0, 0, 2.4, 0.016)}, 10, pieces); };
    const double best = r(64);
    double before = 1;
    for (int pieces : {2, 4, 8, 16, 32}) {
        const double error = std::fabs(r(pieces) / best - 1);
        EXPECT_LT(error, before) << pieces;
        before = error;
    }
    EXPECT_LT(before, 0.003);
}

TEST(FieldStrata, FarAwayTheDeepestSoilRules) {
    const Field field = field_of(stack({{1000, 0.5}, {30, 1.2}}, 100), three_electrodes(2.4));
    const double v =
        field.potential(spot(0, 3000, 0), {amperes(3), amperes(1), amperes(2)}).number();
    EXPECT_NEAR(v * 2 * pi * 3000 / (100 * 6), 1, 5e-3);
}

TEST(FieldStrata, SoilsAndWiresThatCannotBeAreRefused) {
    const Strata soil = stack({{1000, 0.5}, {100, 1}}, 300);
    const std::vector<Wire> one{rod(0, 0, 2.4, 0.016)};
    EXPECT_TRUE(solve_field(soil, one));
    EXPECT_FALSE(solve_field(stack({{1000, 0.5}, {100, 0}}, 300), one));
    EXPECT_FALSE(solve_field(stack({{1000, 0.5}, {0, 1}}, 300), one));
    EXPECT_FALSE(solve_field(stack({{1000, 0.5}, {0.01, 1}}, 300), one));
    EXPECT_FALSE(solve_field(soil, {one[0], one[0]})) << "two rods in one place";
    EXPECT_FALSE(solve_field(soil, {{spot(0, 0, -0.1), spot(0, 0, 1), metres(0.008), 0}}));
    EXPECT_FALSE(solve_field(soil, {rod(0, 0, 0.03, 0.016)})) << "stout";
    const auto across =
        solve_field(soil, {one[0], {spot(0, 0, 1), spot(0, 0, 3), metres(0.008), 1}});
    EXPECT_FALSE(across) << "a rod in another";
}

RC_GTEST_PROP(FieldStrata, WorseSoilAnywhereNeverLowersAnyResistance, ()) {
    Layers layers = any_layers();
    double deepest = number(100, 20000);
    const std::vector<Wire> wires{rod(0, 0, number(6, 40), 0.016, 0), rod(2, 0, 1.2, 0.016, 1)};
    const Cutting cutting{metres(0.2), 6};
    const Field before = *solve_field(stack(layers, deepest), wires, cutting);
    const auto which = static_cast<std::size_t>(*rc::gen::inRange(0, 5));
    const double factor = number(12, 40);
    (which < layers.size() ? layers[which].first : deepest) *= factor;
    const Field after = *solve_field(stack(layers, deepest), wires, cutting);
    for (int i = 0; i < 2; ++i) {
        RC_ASSERT(after.resistance(i, i).number() > before.resistance(i, i).number() * (1 - 1e-5));
        RC_ASSERT(after.resistance(i, i).number() < before.resistance(i, i).number() * factor);
    }
    RC_ASSERT(after.joined().number() > before.joined().number() * (1 - 1e-5));
}

RC_GTEST_PROP(FieldStrata, LongerOrMoreRodsAreNeverWorseAndFiguresSuperpose, ()) {
    const Strata soil = stack(any_layers(), number(100, 20000));
    const Medium ready = medium(soil);
    const double length = number(6, 36);
    const double apart = number(5, 60);
    const auto solve = [&](const std::vector<Wire>& wires) {
        return *solve_field(ready, wires, {metres(0.15), 6});
    };
    const double alone = solve({rod(0, 0, length, 0.014)}).joined().number();
    const double longer = solve({rod(0, 0, length + 0.6, 0.014)}).joined().number();
    RC_ASSERT(longer < alone * 1.003);
    const Field two = solve({rod(0, 0, length, 0.014, 0), rod(apart, 0, length, 0.014, 1)});
    RC_ASSERT(two.joined().number() < alone);
    RC_ASSERT(two.joined().number() > alone / 2);
    RC_ASSERT(two.resistance(0, 0).number() < alone * (1 + 1e-9));
    RC_ASSERT(two.resistance(0, 1) < two.resistance(0, 0));
    const Spot place = spot(number(-50, 50), 1, 0);
    const double first = two.potential(place, {amperes(1), amperes(0)}).number();
    const double second = two.potential(place, {amperes(0), amperes(1)}).number();
    const double both = two.potential(place, {amperes(3), amperes(-2)}).number();
    RC_ASSERT(std::fabs(both - (3 * first - 2 * second)) < 1e-9 * (first + second));
}

}  // namespace
}  // namespace toft::field
