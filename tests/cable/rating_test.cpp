#include "cable/rating.h"

#include "support/catalogue.h"
#include "support/draws.h"
#include "support/working.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace toft::cable {
namespace {

using tables::Family;
using tables::ReferenceMethod;

FactorTables tables_of(Family family) {
    return {support::catalogue().cable_constants, support::make(family),
            support::catalogue().limits.buried_cc};
}

LegFactors<Silent> factors(const Surroundings& at, Family family = Family::armoured_xlpe_copper) {
    Silent ledger;
    return leg_factors(ledger, tables_of(family), at);
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
    return leg_rating(ledger, support::cable(2, section).two, factors(at), 1);
}

double rating(const tables::Cable& cable, int loaded, const Surroundings& at) {
    Silent ledger;
    return leg_rating(ledger, cable.duty(loaded), factors(at, cable.family), 1).number();
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

TEST(Rating, EachFamilyHasItsOwnMethodForALaying) {
    const auto& flat = support::cable(Family::flat_twin_and_earth, 2, 2.5);
    EXPECT_EQ(rating(flat, 2, reference_air(Laying::clipped)), 27);
    EXPECT_EQ(rating(flat, 2, reference_air(Laying::tray)), 27);
    EXPECT_EQ(rating(flat, 2, reference_air(Laying::conduit)), 23);
    EXPECT_EQ(rating(flat, 2, reference_air(Laying::above_ceiling)), 17);
    const auto& round = support::cable(Family::unarmoured_xlpe_copper, 5, 2.5);
    EXPECT_EQ(rating(round, 3, reference_air(Laying::trunking)), 26);
    EXPECT_EQ(rating(round, 3, reference_air(Laying::free_air)), 32);
    EXPECT_EQ(rating(support::cable(5, 16), 3, reference_air(Laying::overhead)), 99);
}

TEST(Rating, WhereNoneIsTabulatedNothingMayBeCarried) {
    for (const Laying laying : {Laying::direct, Laying::duct}) {
        for (const Family family : {Family::flat_twin_and_earth, Family::unarmoured_pvc_copper,
                                    Family::unarmoured_xlpe_copper}) {
            EXPECT_FALSE(factors(reference_ground(laying), family).method);
        }
        const auto& flat = support::cable(Family::flat_twin_and_earth, 2, 16);
        EXPECT_EQ(rating(flat, 2, reference_ground(laying)), 0);
    }
    EXPECT_EQ(rating(support::cable(2, 16), 2, reference_air(Laying::conduit)), 0);
    EXPECT_EQ(rating(support::cable(2, 16), 2, reference_air(Laying::above_ceiling)), 0);
    EXPECT_EQ(rating(support::cable(2, 16), 3, reference_air(Laying::clipped)), 0);
}

TEST(Rating, WhereHeatIsShutInTheEnclosedGroupingCounts) {
    Surroundings at;
    at.circuits = 2;
    for (const Laying laying :
         {Laying::conduit, Laying::trunking, Laying::insulated, Laying::above_ceiling}) {
        at.laying = laying;
        EXPECT_EQ(factors(at, Family::unarmoured_pvc_copper).cg, 0.8);
    }
    at.laying = Laying::clipped;
    EXPECT_EQ(factors(at, Family::unarmoured_pvc_copper).cg, 0.85);
}

TEST(Rating, PvcIsHurtMoreByWarmSurroundings) {
    Surroundings at = reference_air(Laying::clipped);
    at.temperature = celsius(40);
    EXPECT_EQ(factors(at, Family::flat_twin_and_earth).ca, 0.87);
    EXPECT_EQ(factors(at, Family::unarmoured_xlpe_copper).ca, 0.91);
}

TEST(Rating, FlatCableInInsulationHasItsOwnMethodAndNoFactorOnTop) {
    Surroundings at = reference_air(Laying::insulated);
    at.in_insulation = metres(3);
    EXPECT_EQ(factors(at, Family::flat_twin_and_earth).ci, 1);
    EXPECT_EQ(factors(at, Family::flat_twin_and_earth).method, ReferenceMethod::m103);
    EXPECT_EQ(rating(support::cable(Family::flat_twin_and_earth, 2, 6), 2, at), 23.5);
    EXPECT_EQ(rating(support::cable(Family::unarmoured_pvc_copper, 3, 6), 2, at), 23);
}

Surroundings any_surroundings() {
    using support::number_between;
    Surroundings at;
    at.laying = static_cast<Laying>(*rc::gen::inRange<std::size_t>(0, tables::layings));
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
    const auto& cables = support::catalogue().cables;
    const auto& cable = cables[*rc::gen::inRange<std::size_t>(0, cables.size())];
    const auto& duty = cable.duty(*rc::gen::element(1, 3));
    Recording recording;
    const auto recorded =
        leg_rating(recording, duty, leg_factors(recording, tables_of(cable.family), at), at.leg);
    Silent silent;
    RC_ASSERT(recorded.value == leg_rating(silent, duty, factors(at, cable.family), at.leg));
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
