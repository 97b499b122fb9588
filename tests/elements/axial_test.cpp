// Rods, rings and half balls in uniform and layered soil, solved as fields of thin wires by the
// program and by finite elements with gmsh and getdp. They must agree to one per cent.

#include "field/electrode_shape.h"
#include "field/field.h"
#include "support/elements.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace toft::field {
namespace {

constexpr double agreement = 0.01;
constexpr double half_turn = 3.14159265358979;

using Places = std::vector<std::pair<double, double>>;

struct Ground2 {
    double upper, lower, thickness;

    LayeredSoil soil() const { return {ohm_metres(upper), ohm_metres(lower), metres(thickness)}; }
    support::TurnedField elements() const { return {upper, lower, thickness}; }
};

Spot axial_spot(double east, double depth) { return {metres(east), metres(0), metres(depth)}; }

/// Holds rises and potentials of `wires` against finite elements, one ampere into `fed`.
void compare(const Ground2& ground, const support::TurnedField& elements,
             const std::vector<Wire>& wires, const Places& places, int fed = 0) {
    const auto theirs = elements.solve(fed, places);
    const auto field = solve_field(ground.soil(), wires);
    ASSERT_TRUE(field);
    ASSERT_EQ(static_cast<std::size_t>(field->electrodes()), theirs.rises.size());
    Currents currents(theirs.rises.size());
    currents[static_cast<std::size_t>(fed)] = amperes(1);
    const auto rises = field->rises(currents);
    for (std::size_t i = 0; i < rises.size(); ++i) {
        EXPECT_GT(theirs.rises[i], 0);
        EXPECT_NEAR(rises[i].number() / theirs.rises[i], 1, agreement) << "electrode " << i;
    }
    for (std::size_t i = 0; i < places.size(); ++i) {
        const Volts here =
            field->potential(axial_spot(places[i].first, places[i].second), currents);
        EXPECT_NEAR(here.number() / theirs.potential[i], 1, agreement) << places[i].first << " m";
    }
}

void compare_rod(const Ground2& ground, double length, double radius) {
    auto elements = ground.elements();
    elements.rod(length, radius);
    compare(ground, elements, {rod_wire(axial_spot(0, 0), metres(length), metres(radius))},
            {{0.5, 0}, {1, 0}, {5, 0}, {0.5, 0.8}});
}

void compare_ring(const Ground2& ground, double diameter, double radius, double depth) {
    auto elements = ground.elements();
    elements.ring(diameter, radius, depth);
    compare(ground, elements,
            ring_wires(axial_spot(0, depth), metres(diameter), metres(radius), 48),
            {{0, 0}, {diameter, 0}});
}

/// Rings one above the other that act as the half ball they wrap.
void compare_half_ball(const Ground2& ground, double radius) {
    auto elements = ground.elements();
    elements.half_ball(radius);
    std::vector<Wire> wires;
    const int count = 12;
    const double slice = half_turn / 2 / count;
    for (int i = 0; i < count; ++i) {
        const double angle = (i + 0.5) * slice;
        const double across = 2 * radius * std::cos(angle);
        const auto ring = ring_wires(axial_spot(0, radius * std::sin(angle)), metres(across),
                                     metres(radius * slice / (2 * half_turn)),
                                     std::max(4, static_cast<int>(32 * std::cos(angle))));
        wires.insert(wires.end(), ring.begin(), ring.end());
    }
    compare(ground, elements, wires, {{2 * radius, 0}, {5 * radius, 0}});
}

TEST(Axial, RodInUniformSoil) { compare_rod({100, 100, 1}, 1.2, 0.008); }
TEST(Axial, RodInTheUpperLayer) { compare_rod({100, 400, 2}, 1.2, 0.008); }
TEST(Axial, RodThroughLoamIntoRock) { compare_rod({50, 500, 1.2}, 2.4, 0.007); }
TEST(Axial, RodThroughADryCrust) { compare_rod({1000, 100, 0.5}, 1.2, 0.008); }
TEST(Axial, RodJustInTheBetterSoil) { compare_rod({500, 50, 2}, 2.4, 0.007); }

TEST(Axial, RingInUniformSoil) { compare_ring({100, 100, 1}, 5, 0.004, 0.6); }
TEST(Axial, RingOverBetterSoil) { compare_ring({500, 50, 1}, 5, 0.004, 0.6); }
TEST(Axial, RingOverRock) { compare_ring({50, 500, 1}, 5, 0.004, 0.6); }
TEST(Axial, RingUnderADryCrust) { compare_ring({400, 100, 0.4}, 2, 0.005, 0.6); }

TEST(Axial, HalfBallInUniformSoil) { compare_half_ball({100, 100, 2}, 1); }
TEST(Axial, HalfBallThroughTheBoundary) { compare_half_ball({300, 50, 0.5}, 1); }

TEST(Axial, FiniteElementsKnowTheHalfBall) {
    auto elements = Ground2{100, 100, 2}.elements();
    elements.half_ball(1);
    const auto answer = elements.solve(0, {{2, 0}, {10, 0}});
    EXPECT_NEAR(answer.rises.at(0) / (100 / (2 * half_turn)), 1, 1e-3);
    EXPECT_NEAR(answer.potential.at(1) / (100 / (2 * half_turn * 10)), 1, 5e-3);
}

TEST(Axial, RodInsideARing) {
    const Ground2 ground{100, 300, 1.5};
    auto elements = ground.elements();
    elements.rod(2.4, 0.008);
    elements.ring(4, 0.004, 0.5);
    auto wires = ring_wires(axial_spot(0, 0.5), metres(4), metres(0.004), 36, 1);
    wires.push_back(rod_wire(axial_spot(0, 0), metres(2.4), metres(0.008)));
    compare(ground, elements, wires, {{1, 0}, {4, 0}}, 0);
    compare(ground, elements, wires, {{1, 0}, {4, 0}}, 1);
}

TEST(Axial, ALayerLeftOutWouldBeNoticed) {
    auto elements = Ground2{100, 300, 1}.elements();
    elements.rod(1.2, 0.008);
    const auto field = solve_field(uniform_soil(ohm_metres(100)),
                                   {rod_wire(axial_spot(0, 0), metres(1.2), metres(0.008))});
    ASSERT_TRUE(field);
    EXPECT_LT(field->joined().number() / elements.solve(0).rises.at(0), 1 - 10 * agreement);
}

}  // namespace
}  // namespace toft::field
