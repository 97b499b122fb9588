#include "cable/rating.h"

#include "support/catalogue.h"
#include "support/draws.h"
#include "support/working.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace toft::cable {
namespace {

LegFactors<Silent> factors(const Surroundings& at) {
    Silent ledger;
    return leg_factors(ledger, support::catalogue().cable_constants,
                       support::catalogue().limits.buried_cc, at);
}

Surroundings reference_air(Laying laying) {
    Surroundings at;
    at.laying = laying;
    at.temperature = celsius(30);
    return at;
}

Surroundings reference_ground(Laying laying) {
    Surroundings at;
    at.laying = laying;
    at.temperature = celsius(20);
    at.depth = metres(0.7);
    return at;
}

Amperes rating(double section, const Surroundings& at) {
    Silent ledger;
    return leg_rating(ledger, support::cable(2, section), factors(at), 1);
}

TEST(Rating, AtReferenceConditionsIsTheTabulatedOne) {
    EXPECT_EQ(rating(10, reference_air(Laying::clipped)), amperes(85));
    EXPECT_EQ(rating(10, reference_air(Laying::tray)), amperes(90));
}

TEST(Rating, InTheGroundIsTheTabulatedOneTimesTheFactorForBuriedCable) {
    const double cc = support::catalogue().limits.buried_cc.value;
    EXPECT_NEAR(rating(10, reference_ground(Laying::direct)).number(), 71 * cc, 1e-9);
    EXPECT_NEAR(rating(10, reference_ground(Laying::duct)).number(), 71 * cc, 1e-9);
}

TEST(Rating, EachFactorIsOneWhereItDoesNotApply) {
    const auto air = factors(reference_air(Laying::clipped));
    EXPECT_EQ(air.cs, 1);
    EXPECT_EQ(air.cd, 1);
    EXPECT_EQ(air.cc, 1);
    EXPECT_EQ(air.ci, 1);
    EXPECT_EQ(factors(reference_ground(Laying::direct)).ci, 1);
}

TEST(Rating, BetweenTwoRowsTheSoilFactorIsReadOnAStraightLine) {
    Surroundings at = reference_ground(Laying::direct);
    at.thermal_resistivity = 1.2;
    EXPECT_NEAR(factors(at).cs, 1.412, 1e-12);
    at.thermal_resistivity = 1.5;
    EXPECT_EQ(factors(at).cs, 1.28);
}

TEST(Rating, BeyondTheTableTheEndRowHolds) {
    Surroundings at = reference_ground(Laying::direct);
    at.thermal_resistivity = 0.1;
    EXPECT_EQ(factors(at).cs, 1.88);
    at = reference_air(Laying::clipped);
    at.temperature = celsius(-10);
    EXPECT_EQ(factors(at).ca, 1.02);
}

TEST(Rating, HeatKeepsTheFactorForBuriedCableOut) {
    const auto f = factors(reference_ground(Laying::direct));
    EXPECT_NEAR(f.total, f.heat * f.cc, 1e-12);
    EXPECT_EQ(f.heat, f.ca * f.cg * f.ci * f.cs * f.cd);
}

TEST(Rating, OnlyTheInsulatedLegPaysForInsulation) {
    Surroundings at = reference_air(Laying::insulated);
    at.in_insulation = millimetres(400);
    const double part = factors(at).ci;
    EXPECT_LT(part, 0.6);
    at.in_insulation = metres(5);
    EXPECT_EQ(factors(at).ci, 0.5);
    at.laying = Laying::clipped;
    EXPECT_EQ(factors(at).ci, 1);
}

Surroundings any_surroundings() {
    using support::number_between;
    Surroundings at;
    at.laying = *rc::gen::element(Laying::clipped, Laying::tray, Laying::insulated, Laying::direct,
                                  Laying::duct);
    at.temperature = celsius(number_between(0, 60));
    at.circuits = number_between(1, 9);
    at.thermal_resistivity = number_between(0.5, 3);
    at.depth = metres(number_between(0.3, 3));
    at.in_insulation = metres(number_between(0, 3));
    at.leg = *rc::gen::inRange(1, 4);
    return at;
}

RC_GTEST_PROP(Rating, WritesWorkingThatHoldsAndGivesTheSameFigure, ()) {
    const Surroundings at = any_surroundings();
    const auto& cable = support::cable(3, 16);
    Recording recording;
    const auto recorded = leg_rating(recording, cable,
                                     leg_factors(recording, support::catalogue().cable_constants,
                                                 support::catalogue().limits.buried_cc, at),
                                     at.leg);
    Silent silent;
    RC_ASSERT(recorded.value == leg_rating(silent, cable, factors(at), at.leg));
    for (const std::string& wrong : support::wrong_lines(recording.lines())) RC_FAIL(wrong);
}

RC_GTEST_PROP(Rating, NoFactorButSoilDepthAndColdEverExceedsOne, ()) {
    const auto f = factors(any_surroundings());
    RC_ASSERT(f.cg <= 1);
    RC_ASSERT(f.ci <= 1);
    RC_ASSERT(f.cc <= 1);
    RC_ASSERT(f.total > 0);
}

}  // namespace
}  // namespace toft::cable
