#include "cable/drop.h"

#include "support/catalogue.h"
#include "support/working.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace toft::cable {
namespace {

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
    const DropInput<Silent> in{amperes(amps), celsius(around), metres(length), &factors, 1};
    return leg_drop(ledger, constants(), cable, in);
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
    at.laying = *rc::gen::element(Laying::clipped, Laying::direct);
    at.temperature = celsius(*rc::gen::inRange(5, 45));
    at.depth = metres(0.6);
    const auto factors =
        leg_factors(ledger, constants(), support::catalogue().limits.buried_cc, at);
    DropInput<Recording> in;
    in.ib = ledger.stated({"Ib", "design current"}, amperes(*rc::gen::inRange(0, 150)), "survey");
    in.surroundings = ledger.stated({"ta", "around", 1}, at.temperature, "survey");
    in.length = ledger.stated({"L", "length", 1}, metres(*rc::gen::inRange(1, 90)), "survey");
    in.factors = &factors;
    leg_drop(ledger, constants(), support::cable(2, 25), in);
    for (const std::string& wrong : support::wrong_lines(ledger.lines())) RC_FAIL(wrong);
}

}  // namespace
}  // namespace toft::cable
