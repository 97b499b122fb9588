// Rods and rings in three and four layers, under crusts and over rock, solved as fields of thin
// wires by the program and by finite elements with gmsh and getdp. They must agree to one per cent.

#include "field/season.h"
#include "support/elements.h"
#include "support/grounds.h"

#include <gtest/gtest.h>

namespace toft::field {
namespace {

constexpr double strata_agreement = 0.01;

using Layers = std::vector<std::pair<double, double>>;
using Places = std::vector<std::pair<double, double>>;

/// Holds rises and potentials of `wires` against finite elements, one ampere into `fed`.
void compare(const Strata& soil, const support::TurnedField& elements,
             const std::vector<Wire>& wires, const Places& places, std::size_t fed = 0) {
    const auto theirs = elements.solve(static_cast<int>(fed), places);
    const auto field = solve_field(soil, wires);
    ASSERT_TRUE(field);
    Currents currents(theirs.rises.size());
    currents[fed] = amperes(1);
    const Driven driven = field->driven(currents);
    ASSERT_EQ(driven.rises().size(), theirs.rises.size());
    for (std::size_t i = 0; i < theirs.rises.size(); ++i) {
        EXPECT_GT(theirs.rises[i], 0);
        EXPECT_NEAR(driven.rises()[i].number() / theirs.rises[i], 1, strata_agreement) << i;
        testing::Test::RecordProperty(
            "rise" + std::to_string(i),
            std::to_string(driven.rises()[i].number() / theirs.rises[i] - 1));
    }
    for (std::size_t i = 0; i < places.size(); ++i) {
        const Volts here = driven.potential(spot(places[i].first, 0, places[i].second));
        EXPECT_NEAR(here.number() / theirs.potential[i], 1, strata_agreement)
            << places[i].first << " m, " << places[i].second << " deep";
    }
}

void compare_rod(const Layers& layers, double deepest, double length, double radius) {
    support::TurnedField elements(layers, deepest);
    elements.rod(length, radius);
    compare(stack(layers, deepest), elements, {rod(0, 0, length, 2 * radius)},
            {{0.5, 0}, {2, 0}, {10, 0}, {0.5, 0.8}, {1, 3}});
}

void compare_ring(const Layers& layers, double deepest, double diameter, double depth) {
    support::TurnedField elements(layers, deepest);
    elements.ring(diameter, 0.004, depth);
    compare(stack(layers, deepest), elements,
            ring_wires(spot(0, 0, depth), metres(diameter), metres(0.004), 48),
            {{0, 0}, {diameter, 0}, {diameter, 2}});
}

TEST(Strata, RodThroughADryCrustIntoTwoLayers) {
    compare_rod({{1000, 0.5}, {100, 1.0}}, 300, 2.4, 0.008);
}
TEST(Strata, RodThroughThreeLayersIntoBetterSoil) {
    compare_rod({{100, 0.6}, {400, 1.2}}, 50, 2.4, 0.008);
}
TEST(Strata, RodInTheMiddleLayerOverRock) { compare_rod({{300, 0.4}, {60, 3}}, 1000, 2.4, 0.008); }
TEST(Strata, RodStandsInTheTopOfThree) { compare_rod({{80, 2}, {20, 1}}, 500, 1.2, 0.008); }
TEST(Strata, RodThroughFourLayers) {
    compare_rod({{800, 0.3}, {100, 0.9}, {250, 1.0}}, 40, 3.6, 0.007);
}
TEST(Strata, RingInTheMiddleLayer) { compare_ring({{400, 0.4}, {100, 1.5}}, 800, 4, 0.6); }
TEST(Strata, RingOverTwoLayers) { compare_ring({{200, 1}, {30, 2}}, 300, 4, 0.5); }

TEST(Strata, RodInsideARingUnderACrust) {
    const Layers layers{{900, 0.3}, {100, 1.5}};
    support::TurnedField elements(layers, 300);
    elements.rod(2.4, 0.008);
    elements.ring(4, 0.004, 0.5);
    auto wires = ring_wires(spot(0, 0, 0.5), metres(4), metres(0.004), 36, 1);
    wires.push_back(rod(0, 0, 2.4, 0.016));
    compare(stack(layers, 300), elements, wires, {{1, 0}, {6, 0}}, 0);
    compare(stack(layers, 300), elements, wires, {{1, 0}, {6, 0}}, 1);
}

TEST(Strata, CrustOverSurveyedSoilIsThatOfFiniteElements) {
    // 0.8 m of frost, six times, over 0.6 m of 100 on 1 m of 150 on 60 ohm metres.
    const auto covered = with_crust(stack({{100, 0.6}, {150, 1.0}}, 60), {metres(0.8), 6});
    ASSERT_TRUE(covered);
    support::TurnedField elements({{600, 0.6}, {900, 0.2}, {150, 0.8}}, 60);
    elements.rod(2.4, 0.008);
    compare(*covered, elements, {rod(0, 0, 2.4, 0.016)}, {{1, 0}, {5, 0}});
}

TEST(Strata, ALayerLeftOutWouldBeNoticed) {
    support::TurnedField elements({{1000, 0.5}, {100, 1.0}}, 300);
    elements.rod(2.4, 0.008);
    const auto rises = elements.solve(0).rises;
    EXPECT_LT(joined(stack({{100, 1.5}}, 300), {rod(0, 0, 2.4, 0.016)}) / rises.at(0),
              1 - 5 * strata_agreement);
    EXPECT_LT(joined(stack({{1000, 0.5}}, 100), {rod(0, 0, 2.4, 0.016)}) / rises.at(0),
              1 - 5 * strata_agreement);
}

}  // namespace
}  // namespace toft::field
