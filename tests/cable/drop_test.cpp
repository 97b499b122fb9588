#include "cable/drop.h"

#include "support/catalogue.h"
#include "support/working.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>

namespace toft::cable {
namespace {

using tables::Family;

const tables::CableConstants& constants() { return support::catalogue().cable_constants; }

LegFactors<Silent> unit_factors() {
    LegFactors<Silent> f;
    f.method = tables::ReferenceMethod::c;
    f.heat = 1;
    f.total = 1;
    return f;
}

LegDrop<Silent> drop(const tables::Cable& cable, double amps, double around,
                     const LegFactors<Silent>& factors, double length = 1) {
    Silent ledger;
    const DropInput<Silent> in{constants(),
                               tables::make_of(support::catalogue(), cable),
                               cable.two,
                               factors,
                               1,
                               amperes(amps),
                               0,
                               celsius(around),
                               metres(length),
                               1};
    return leg_drop(ledger, in);
}

/// Three loaded cores at full load over one metre, the neutral carrying its share.
LegDrop<Silent> three_phase_drop(const tables::Cable& cable, double neutral_share) {
    Silent ledger;
    const LegFactors<Silent> factors = unit_factors();
    const tables::Make& make = tables::make_of(support::catalogue(), cable);
    const DropInput<Silent> in{constants(),  make,          cable.three, factors,   3,
                               amperes(1e4), neutral_share, celsius(30), metres(1), 1};
    return leg_drop(ledger, in);
}

TEST(LegDrop, FullyLoadedIsTheTabulatedDrop) {
    const auto leg = drop(support::cable(2, 25), 146, 30, unit_factors(), 10);
    EXPECT_EQ(leg.conductor, celsius(90));
    EXPECT_NEAR(leg.loop.r.number(), 0.0185, 1e-12);
    EXPECT_NEAR(leg.loop.x.number(), 0.0016, 1e-12);
}

TEST(LegDrop, AnUnloadedConductorIsAsWarmAsItsSurroundings) {
    const auto leg = drop(support::cable(2, 10), 0, 12, unit_factors());
    EXPECT_EQ(leg.conductor, celsius(12));
    EXPECT_NEAR(leg.loop.r.number() / 0.0047, (234.5 + 12) / (234.5 + 90), 1e-12);
}

TEST(LegDrop, HalfTheRatedCurrentWarmsByAQuarter) {
    const auto leg = drop(support::cable(2, 10), 42.5, 30, unit_factors());
    EXPECT_NEAR(leg.conductor.number(), 30 + 60 * 0.25, 1e-12);
}

TEST(LegDrop, GoodSoilNeverPutsTheConductorBelowTheGround) {
    LegFactors<Silent> soil = unit_factors();
    soil.heat = 1.8;
    for (double amps : {0.0, 10.0, 50.0, 150.0}) {
        const auto leg = drop(support::cable(2, 50), amps, 15, soil);
        EXPECT_FALSE(leg.conductor < celsius(15)) << amps;
        EXPECT_FALSE(celsius(90) < leg.conductor) << amps;
    }
}

TEST(LegDrop, AnOverloadedLegIsTakenAtItsHighestTemperatureAndNoHigher) {
    EXPECT_EQ(drop(support::cable(2, 10), 500, 30, unit_factors()).conductor, celsius(90));
}

TEST(LegDrop, BalancedThreePhasesMeetOneCoreOnly) {
    const auto leg = three_phase_drop(support::cable(4, 25), 0);
    EXPECT_NEAR(leg.loop.r.number() * std::sqrt(3.0), 1.6e-3, 1e-12);
    EXPECT_NEAR(leg.loop.x.number() * std::sqrt(3.0), 0.14e-3, 1e-12);
}

TEST(LegDrop, OneLoadedPhaseOfThreeMeetsItsNeutralAsMuch) {
    const auto balanced = three_phase_drop(support::cable(4, 25), 0);
    const auto alone = three_phase_drop(support::cable(4, 25), 1);
    EXPECT_NEAR(alone.loop.r / balanced.loop.r, 2, 1e-12);
    EXPECT_NEAR(alone.loop.r / support::cable(4, 25).two.drop_r.value / metres(1), 1, 0.03);
}

TEST(LegDrop, GoesByTheMetalAndTheInsulationOfItsCable) {
    const auto pvc =
        drop(support::cable(Family::armoured_pvc_copper, 2, 25), 500, 30, unit_factors());
    EXPECT_EQ(pvc.conductor, celsius(70));
    const auto cold =
        drop(support::cable(Family::armoured_xlpe_aluminium, 2, 25), 0, 20, unit_factors());
    EXPECT_NEAR(cold.loop.r.number() / 3.08e-3, (228.0 + 20) / (228.0 + 90), 1e-12);
}

TEST(LegDrop, WithoutATabulatedRatingTheConductorIsAtItsHottest) {
    LegFactors<Silent> nowhere = unit_factors();
    nowhere.method.reset();
    const auto leg = drop(support::cable(2, 10), 0, 20, nowhere);
    EXPECT_EQ(leg.conductor, celsius(90));
    EXPECT_NEAR(leg.loop.r.number(), 0.0047, 1e-12);
    nowhere.method = tables::ReferenceMethod::b;
    EXPECT_EQ(drop(support::cable(2, 10), 0, 20, nowhere).conductor, celsius(90));
}

TEST(LegDrop, WhatIsNotTabulatedIsNeverASmallDrop) {
    const auto leg = three_phase_drop(support::cable(2, 95), 0);
    EXPECT_GT(leg.loop.r, ohms(1e5));
    EXPECT_EQ(leg.conductor, celsius(90));
}

RC_GTEST_PROP(LegDrop, MoreLoadNeverLowersTheResistance, ()) {
    const double load = *rc::gen::inRange(0, 100);
    const double more = load + *rc::gen::inRange(0, 50);
    const double around = *rc::gen::inRange(0, 60);
    const auto& cable = support::cable(3, *rc::gen::element(1.5, 4.0, 10.0, 25.0));
    RC_ASSERT(drop(cable, more, around, unit_factors()).loop.r >=
              drop(cable, load, around, unit_factors()).loop.r);
}

RC_GTEST_PROP(LegDrop, WritesWorkingThatHolds, ()) {
    Recording ledger;
    Surroundings at;
    at.temperature = celsius(*rc::gen::inRange(5, 45));
    at.depth = metres(0.6);
    const auto family = *rc::gen::element(Family::armoured_xlpe_copper, Family::armoured_pvc_copper,
                                          Family::armoured_xlpe_aluminium);
    const tables::Cable& cable = support::cable(family, 4, 25);
    const tables::Make& make = support::make(family);
    const int phases = *rc::gen::element(1, 3);
    at.laying = *rc::gen::element(Laying::clipped, Laying::direct, Laying::conduit);
    const auto factors =
        leg_factors(ledger, {constants(), make, support::catalogue().limits.buried_cc}, at);
    const DropInput<Recording> in{
        constants(),
        make,
        cable.duty(phases),
        factors,
        phases,
        ledger.stated({"Ib", "current"}, amperes(*rc::gen::inRange(0, 150)), "survey"),
        ledger.stated({"u", "share of the neutral"}, *rc::gen::inRange(0, 100) / 100.0, "survey"),
        ledger.stated({"ta", "around", 1}, at.temperature, "survey"),
        ledger.stated({"L", "length", 1}, metres(*rc::gen::inRange(1, 90)), "survey"),
        1};
    leg_drop(ledger, in);
    for (const std::string& wrong : support::wrong_lines(ledger.lines())) RC_FAIL(wrong);
}

}  // namespace
}  // namespace toft::cable
