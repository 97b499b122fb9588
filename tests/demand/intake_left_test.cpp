#include "demand/intake_left.h"

#include "demand/circuits.h"

#include <gtest/gtest.h>

namespace toft::demand {
namespace {

using site::CircuitKind;
using site::Scenario;
using site::Standing;
using support::measured;

HouseDemand<Silent> house(const site::Job& job, Scenario scenario = Scenario::likely) {
    Silent ledger;
    return house_demand(ledger, place(), job, scenario);
}

IntakeLimits<Silent> limits(const site::Intake& intake, double fuse = 100) {
    Silent ledger;
    return intake_limits(ledger, support::catalogue().demand, intake, amperes(fuse));
}

double least(const IntakeLimits<Silent>& of, bool behind_switch) {
    Silent ledger;
    return least_limit(ledger, of, behind_switch).number();
}

TEST(IntakeLeft, ThreeWaysToKnowTheHouse) {
    site::Job job = support::plain_job();
    job.intake.demand = {};
    EXPECT_FALSE(house(job).best());
    job.buildings[0].circuits = {drawing(CircuitKind::socket_ring, 32),
                                 drawing(CircuitKind::shower, 40)};
    EXPECT_EQ(house(job).best(), Way::estimated);
    EXPECT_EQ(house(job).at(Way::estimated), amperes(72));
    job.intake.agreed = measured(amperes(60));
    EXPECT_EQ(house(job).best(), Way::declared);
    job.intake.demand = measured(amperes(38));
    EXPECT_EQ(house(job).best(), Way::measured);
    EXPECT_EQ(house(job).at(Way::measured), amperes(38));
    EXPECT_EQ(house(job).at(Way::declared), amperes(60));
}

TEST(IntakeLeft, AFigureCountsAsItIsKnown) {
    site::Job job = support::plain_job();
    job.intake.demand = {true, amperes(30), amperes(45), Standing::assumed};
    EXPECT_EQ(house(job).best(), Way::estimated);
    EXPECT_EQ(house(job).at(Way::estimated), amperes(45));
    job.intake.demand.standing = Standing::declared;
    EXPECT_EQ(house(job).best(), Way::declared);
    EXPECT_EQ(house(job).at(Way::declared), amperes(45));
}

TEST(IntakeLeft, WhatTheHousePlansCountsUnlessTodayIsAsked) {
    site::Job job = support::plain_job();
    job.buildings[0].circuits = {drawing(CircuitKind::socket_ring, 32),
                                 drawing(CircuitKind::vehicle_charging, 32)};
    job.buildings[0].circuits[1].later = site::Answer::yes;
    EXPECT_EQ(house(job, Scenario::today).at(Way::estimated), amperes(32));
    EXPECT_EQ(house(job, Scenario::likely).at(Way::estimated), amperes(64));
    EXPECT_EQ(house(job, Scenario::everything).at(Way::estimated), amperes(64));
}

TEST(IntakeLeft, TheWeakestPartOfTheIntakeDecides) {
    site::Intake in = support::plain_job().intake;
    EXPECT_EQ(least(limits(in), true), 100);
    in.tails = measured(square_millimetres(25));
    EXPECT_EQ(least(limits(in), true), 100);
    in.tails = measured(square_millimetres(16));
    EXPECT_EQ(least(limits(in), true), 60);
    EXPECT_EQ(least(limits(in, 45), true), 45);
    in.tails = {};
    in.main_switch = measured(amperes(63));
    EXPECT_EQ(least(limits(in), true), 63);
}

TEST(IntakeLeft, TheMainSwitchCarriesOnlyWhatIsFedThroughTheBoard) {
    site::Intake in = support::plain_job().intake;
    in.main_switch = measured(amperes(63));
    EXPECT_EQ(least(limits(in), false), 100);
}

TEST(IntakeLeft, TailsOfASizeThatNoTableHoldsSayNothing) {
    site::Intake in = support::plain_job().intake;
    in.tails = measured(square_millimetres(10));
    EXPECT_FALSE(limits(in).tails_known);
    in.tails = measured(square_millimetres(35));
    EXPECT_EQ(limits(in).tails, amperes(100));
}

TEST(IntakeLeft, WhatIsLeftIsTheLimitLessTheHouseAndMayBeLessThanNothing) {
    Silent ledger;
    site::Job job = support::plain_job();
    job.intake.demand = measured(amperes(38));
    EXPECT_EQ(left_by(ledger, amperes(80), house(job), Way::measured), amperes(42));
    EXPECT_EQ(left_by(ledger, amperes(30), house(job), Way::measured), amperes(-8));
    EXPECT_EQ(new_demand(ledger, amperes(38), amperes(20)), amperes(58));
}

TEST(IntakeLeft, TheWaysHaveWords) {
    EXPECT_STREQ(way_word(Way::estimated), "estimated");
    EXPECT_STREQ(way_word(Way::measured), "measured");
    EXPECT_STREQ(way_word(Way::declared), "declared");
}

}  // namespace
}  // namespace toft::demand
