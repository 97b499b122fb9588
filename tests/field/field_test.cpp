#include "field/field.h"

#include "earth/buried_ring.h"
#include "earth/buried_wire.h"
#include "support/grounds.h"

#include <rapidcheck/gtest.h>

#include <cmath>

namespace toft::field {
namespace {

TEST(Field, OneRodIsWithinOnePerCentOfTheFormula) {
    for (double length : {1.2, 2.4, 4.8}) {
        const double formula = 100 / (2 * pi * length) * (std::log(8 * length / 0.016) - 1);
        EXPECT_NEAR(joined(plain_soil(), {rod(0, 0, length, 0.016)}) / formula, 1, 0.012);
    }
}

TEST(Field, IsNoWorseThanItsPiecesAllow) {
    // Even leakage gives the formula's figure from above; more pieces can only lower it.
    double before = 1e9;
    for (int pieces : {1, 2, 4, 8, 16}) {
        const double r = joined(plain_soil(), {rod(0, 0, 2.4, 0.016)}, 10, pieces);
        EXPECT_LT(r, before * (1 + 1e-9)) << pieces;
        before = r;
    }
    const double one = joined(plain_soil(), {rod(0, 0, 2.4, 0.016)}, 10, 1);
    const double formula = 100 / (2 * pi * 2.4) * (std::log(8 * 2.4 / 0.016) - 1);
    EXPECT_NEAR(one / formula, 1, 0.002);
}

TEST(Field, ErrorFallsWithRefinement) {
    const auto soil = layers(500, 50, 2);
    const auto r = [&](int pieces) { return joined(soil, {rod(0, 0, 2.4, 0.016)}, 10, pieces); };
    const double best = r(64);
    double before = 1;
    for (int pieces : {4, 8, 16, 32}) {
        const double error = std::fabs(r(pieces) / best - 1);
        EXPECT_LT(error, before) << pieces;
        before = error;
    }
    EXPECT_LT(before, 0.003);
}

TEST(Field, RingAndWireMeetTheirClosedForms) {
    Silent ledger;
    const auto ring = earth::buried_ring(
        ledger, {"R", ""},
        earth::BuriedRing<Silent>{ohm_metres(100), metres(5), metres(0.008), metres(0.6)});
    EXPECT_NEAR(
        joined(plain_soil(), ring_wires(spot(0, 0, 0.6), metres(5), metres(0.004), 48), 1, 1) /
            ring.resistance.number(),
        1, 0.01);
    const auto wire = earth::buried_wire(
        ledger, {"R", ""},
        earth::BuriedWire<Silent>{ohm_metres(100), metres(10), metres(0.004), metres(0.6)});
    EXPECT_NEAR(joined(plain_soil(), {{spot(0, 0, 0.6), spot(10, 0, 0.6), metres(0.004), 0}}) /
                    wire.resistance.number(),
                1, 0.01);
}

TEST(Field, IsReciprocal) {
    const Field field = field_of(layers(100, 400, 1), three_electrodes(1.4));
    for (int i = 0; i < 3; ++i) {
        for (int j = 0; j < 3; ++j) {
            EXPECT_EQ(field.resistance(i, j), field.resistance(j, i));
            EXPECT_GT(field.resistance(i, j), ohms(0));
            if (i == j) continue;
            EXPECT_LT(field.resistance(i, j), field.resistance(i, i));
        }
    }
    // The same by another way: what one electrode puts on the places of the other, met by the mean
    // potential over it when it floats.
    const Currents into_rod{amperes(1), amperes(0), amperes(0)};
    const Spot on_wire{metres(2), metres(3.5), metres(0.85)};
    EXPECT_NEAR(field.potential(on_wire, into_rod) / (field.resistance(1, 0) * amperes(1)), 1,
                0.02);
}

TEST(Field, EquipotentialsAreEquipotential) {
    const auto soil = layers(100, 400, 1);
    const Field field = field_of(soil, three_electrodes(1.4), 0.1, 24);
    const Currents currents{amperes(2), amperes(-1), amperes(0.5)};
    const auto rises = field.rises(currents);
    const auto& pieces = field.pieces();
    for (std::size_t i = 1; i + 1 < pieces.size(); ++i) {
        const Piece& piece = pieces[i];
        if (pieces[i - 1].wire != piece.wire || pieces[i + 1].wire != piece.wire) continue;
        // One radius off the axis, away from ends, corners and the boundary, where leakage jumps.
        const Vector& m = piece.bar.middle;
        if (std::fabs(m.z - 1) < 0.03) continue;
        const Vector aside = std::fabs(piece.bar.along.z) > 0.9 ? Vector{piece.bar.radius, 0, 0}
                                                                : Vector{0, 0, piece.bar.radius};
        const Vector p = m + aside;
        const Volts here = field.potential(spot(p.x, p.y, p.z), currents);
        const Volts rise = rises[static_cast<std::size_t>(piece.electrode)];
        EXPECT_NEAR(here / rise, 1, 0.04) << "electrode " << piece.electrode << " at " << m.z;
    }
}

TEST(Field, CurrentsAddUp) {
    const Field field = field_of(layers(300, 60, 0.8), three_electrodes(1.4));
    const Currents currents{amperes(2), amperes(-1), amperes(0)};
    std::vector<double> sums(3);
    std::vector<double> sizes(3);
    for (const Leakage& leak : field.leakage(currents)) {
        const int electrode = leak.wire < 12 ? 2 : leak.wire - 12;
        sums[static_cast<std::size_t>(electrode)] += leak.current.number();
        sizes[static_cast<std::size_t>(electrode)] += std::fabs(leak.current.number());
        EXPECT_GT(leak.length, metres(0));
    }
    EXPECT_NEAR(sums[0], 2, 1e-9);
    EXPECT_NEAR(sums[1], -1, 1e-9);
    EXPECT_NEAR(sums[2], 0, 1e-9);
    EXPECT_GT(sizes[2], 0.003) << "metal without current of its own still carries some through";
}

TEST(Field, LeaksMostAtTheTipAndInTheBetterSoil) {
    const Field field = field_of(plain_soil(), {rod(0, 0, 2.4, 0.016)});
    const auto leaks = field.leakage({amperes(1)});
    const auto density = [](const Leakage& l) { return l.current / l.length; };
    EXPECT_GT(density(leaks.back()), density(leaks[leaks.size() / 2]));
    EXPECT_NEAR(density(leaks.front()) / density(leaks[leaks.size() / 2]), 1, 0.15);
    const Field crossing = field_of(layers(1000, 100, 1.2), {rod(0, 0, 2.4, 0.016)});
    double above = 0;
    for (const Leakage& leak : crossing.leakage({amperes(1)})) {
        if (leak.middle.depth < metres(1.2)) above += leak.current.number();
    }
    EXPECT_GT(above, 0.03);
    EXPECT_LT(above, 0.2);
}

TEST(Field, UniformSoilIsTwoEqualLayers) {
    const auto wires = three_electrodes(1.4);
    const Field uniform = field_of(plain_soil(), wires);
    const Field layered = field_of(layers(100, 100 * (1 + 1e-9), 1), wires);
    for (int i = 0; i < 3; ++i) {
        EXPECT_NEAR(uniform.resistance(i, i) / layered.resistance(i, i), 1, 1e-5);
        EXPECT_NEAR(uniform.resistance(i, (i + 1) % 3) / layered.resistance(i, (i + 1) % 3), 1,
                    1e-5);
    }
}

TEST(Field, FarAwayAnythingIsAPoint) {
    const Field field = field_of(plain_soil(), three_electrodes(1.4));
    const Currents currents{amperes(3), amperes(1), amperes(2)};
    const double v = field.potential(spot(0, 2000, 0), currents).number();
    EXPECT_NEAR(v * 2 * pi * 2000 / (100 * 6), 1, 2e-3);
    const Field layered = field_of(layers(30, 100, 1), three_electrodes(1.4));
    const double deep = layered.potential(spot(0, 2000, 0), currents).number();
    EXPECT_NEAR(deep * 2 * pi * 2000 / (100 * 6), 1, 5e-3) << "far off the lower soil rules";
}

TEST(Field, ManyRingsMakeAHalfBall) {
    std::vector<Wire> wires;
    const int count = 12;
    const double slice = pi / 2 / count;
    for (int i = 0; i < count; ++i) {
        const double angle = (i + 0.5) * slice;
        const auto ring = ring_wires(spot(0, 0, std::sin(angle)), metres(2 * std::cos(angle)),
                                     metres(slice / (2 * pi)),
                                     std::max(4, static_cast<int>(32 * std::cos(angle))));
        wires.insert(wires.end(), ring.begin(), ring.end());
    }
    const Field field = field_of(plain_soil(), wires, 1, 1);
    EXPECT_NEAR(field.joined().number() / (100 / (2 * pi)), 1, 0.01);
    for (double x : {1.5, 2.0, 5.0}) {
        const double v = field.potential(spot(x, 0, 0), {amperes(1)}).number();
        EXPECT_NEAR(v / (100 / (2 * pi * x)), 1, 0.01) << x;
    }
}

TEST(Field, SoilsAndWiresThatCannotBeAreRefused) {
    const std::vector<Wire> one{rod(0, 0, 1.2, 0.016)};
    EXPECT_TRUE(solve_field(layers(100, 300, 1), one));
    for (const LayeredSoil& soil :
         {layers(0, 100, 1), layers(100, -1, 1), layers(100, 300, 0), layers(100, NAN, 1),
          layers(1, 2e4, 1), layers(INFINITY, 100, 1)}) {
        EXPECT_FALSE(solve_field(soil, one));
    }
    EXPECT_FALSE(solve_field(plain_soil(), {}));
    const auto twice = solve_field(plain_soil(), {one[0], one[0]});
    EXPECT_FALSE(twice) << "two rods in one place";
}

TEST(Field, StaysSoundWherePiecesNoLongerThanThickMeetAtASharpCorner) {
    const auto soil = layers(273, 21.8, 0.946);
    const std::vector<Wire> wires{
        {spot(0, 0, 0.5), spot(-0.461, -1.042, 0.5), metres(0.0032), 0},
        {spot(-0.461, -1.042, 0.5), spot(1.41, 0.763, 0.5), metres(0.0077), 0}};
    double before = joined(soil, wires, 0.5, 1);
    for (double longest : {0.2, 0.1, 0.05, 0.03}) {
        const double now = joined(soil, wires, longest, 1);
        EXPECT_LT(now, before * (1 + 1e-6)) << longest;
        EXPECT_GT(now, before * 0.99) << longest;
        before = now;
    }
}

RC_GTEST_PROP(Field, OfWiresThrownAnyhowErrsHighWithFewPieces, ()) {
    const auto number = [](int low, int high) { return *rc::gen::inRange(low, high) / 100.0; };
    const auto soil =
        layers(*rc::gen::inRange(5, 3000), *rc::gen::inRange(5, 3000), number(10, 300));
    const auto place = [&] { return spot(number(-200, 200), number(-200, 200), number(0, 250)); };
    std::vector<Wire> wires;
    Spot last = place();
    const int count = *rc::gen::inRange(1, 6);
    for (int i = 0; i < count; ++i) {
        const Spot next = place();
        const Vector d = vector_of(next) - vector_of(last);
        RC_PRE(dot(d, d) > 0.1);
        wires.push_back({last, next, metres(*rc::gen::inRange(3, 12) / 1000.0), 0});
        if (*rc::gen::arbitrary<bool>()) last = next;
    }
    const auto few = solve_field(soil, wires, {metres(0.3), 4});
    const auto many = solve_field(soil, wires, {metres(0.1), 12});
    RC_PRE(few.has_value() && many.has_value());  // wires almost in each other may be refused
    const double ratio = few->joined() / many->joined();
    RC_ASSERT(ratio > 0.999);
    RC_ASSERT(ratio < 1.2);
}

RC_GTEST_PROP(Field, MoreMetalNeverHasMoreResistanceAndFiguresSuperpose, ()) {
    const auto soil = layers(*rc::gen::inRange(10, 2000), *rc::gen::inRange(10, 2000),
                             *rc::gen::inRange(3, 30) / 10.0);
    const double apart = *rc::gen::inRange(5, 60) / 10.0;
    const double length = *rc::gen::inRange(6, 36) / 10.0;
    const Field two =
        field_of(soil, {rod(0, 0, length, 0.014, 0), rod(apart, 0, length, 0.014, 1)}, 1, 6);
    const double alone = joined(soil, {rod(0, 0, length, 0.014)}, 1, 6);
    RC_ASSERT(two.joined().number() < alone);
    RC_ASSERT(two.joined().number() > alone / 2);
    RC_ASSERT(two.resistance(0, 0).number() < alone * (1 + 1e-9));
    RC_ASSERT(two.resistance(0, 1) < two.resistance(0, 0));
    const Spot place = spot(*rc::gen::inRange(-50, 50) / 10.0, 1, 0);
    const double first = two.potential(place, {amperes(1), amperes(0)}).number();
    const double second = two.potential(place, {amperes(0), amperes(1)}).number();
    const double both = two.potential(place, {amperes(3), amperes(-2)}).number();
    RC_ASSERT(std::fabs(both - (3 * first - 2 * second)) < 1e-9 * (first + second));
}

}  // namespace
}  // namespace toft::field
