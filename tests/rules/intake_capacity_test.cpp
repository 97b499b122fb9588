#include "rules/intake_capacity.h"

#include "base/limit.h"
#include "support/catalogue.h"
#include "support/jobs.h"
#include "support/judging.h"
#include "support/random_jobs.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace toft::rules {
namespace {

using site::FedFrom;
using support::measured;

/// A run of 20 A behind a fuse of 100 A.
site::Job house_drawing(double demand) {
    site::Job job = support::plain_job();
    job.intake.demand = measured(amperes(demand));
    return job;
}

Finding<Silent> capacity_with(const site::Job& job, FedFrom place = FedFrom::spare_way) {
    auto s = support::scheme(support::cable(2, 25), study::Protective::armour,
                             support::breaker("B", 32));
    s.fed_from = place;
    EXPECT_TRUE(support::recorded_alike("intake-capacity", job, s));
    return support::finding_of("intake-capacity", job, s);
}

bool capacity_says(const Finding<Silent>& f, const char* words) {
    return std::string(f.says).find(words) != std::string::npos;
}

TEST(IntakeCapacity, HouseAndRunTogetherAgainstTheOperatorsFuse) {
    const auto found = capacity_with(house_drawing(50));
    EXPECT_EQ(found.verdict, Verdict::meets);
    EXPECT_DOUBLE_EQ(found.value, 70);
    EXPECT_DOUBLE_EQ(found.limit, 100);
    EXPECT_EQ(capacity_with(house_drawing(80)).verdict, Verdict::meets);  // a tie
}

TEST(IntakeCapacity, AShortageIsACautionWithWhatToDo) {
    const auto found = capacity_with(house_drawing(81));
    EXPECT_EQ(found.verdict, Verdict::caution);
    EXPECT_TRUE(capacity_says(found, "ask the operator for a larger one"));
    EXPECT_TRUE(capacity_says(found, "manage the load"));
    EXPECT_EQ(capacity_with(house_drawing(300)).verdict, Verdict::caution);  // short before the run
}

TEST(IntakeCapacity, ARunThatAloneAsksForMoreFails) {
    site::Job job = house_drawing(10);
    job.buildings[1].load = measured(amperes(101));
    EXPECT_EQ(capacity_with(job).verdict, Verdict::fails);
    EXPECT_TRUE(capacity_says(capacity_with(job), "the run alone"));
    job.intake.demand = {};
    EXPECT_EQ(capacity_with(job).verdict, Verdict::fails);
}

TEST(IntakeCapacity, AHouseNobodyMeasuredIsNotKnownAndIsAskedAbout) {
    site::Job job = support::plain_job();
    job.intake.demand = {};
    const auto found = capacity_with(job);
    EXPECT_EQ(found.verdict, Verdict::not_known);
    EXPECT_TRUE(capacity_says(found, "measure it"));
    EXPECT_FALSE(found.limited) << "the run alone is not what the intake carries";
    const auto setting = support::prepared(job);
    ASSERT_EQ(setting.open.size(), 1u);
    EXPECT_EQ(setting.open[0].pointer, "/intake/demand_a");
    ASSERT_EQ(setting.unsaid.size(), 1u);
    EXPECT_EQ(setting.unsaid[0].what, study::Unsaid::house_demand);
    EXPECT_FALSE(study::lacks(support::prepared(job, {study::End::better, {}, {}}),
                              study::Unsaid::house_demand))
        << "a figure that is tried is judged as a figure";
}

TEST(IntakeCapacity, ThinTailsAreTheLimitAndAreToBeRenewed) {
    site::Job job = house_drawing(45);
    job.intake.tails = measured(square_millimetres(16));
    const auto found = capacity_with(job);
    EXPECT_EQ(found.verdict, Verdict::caution);
    EXPECT_DOUBLE_EQ(found.limit, 60);
    EXPECT_TRUE(capacity_says(found, "larger tails"));
    job.intake.tails = measured(square_millimetres(25));
    EXPECT_EQ(capacity_with(job).verdict, Verdict::meets);
}

TEST(IntakeCapacity, TheMainSwitchIsPassedByOnTheTails) {
    site::Job job = house_drawing(45);
    job.intake.main_switch = measured(amperes(63));
    EXPECT_EQ(capacity_with(job).verdict, Verdict::caution);
    EXPECT_TRUE(capacity_says(capacity_with(job), "main switch"));
    EXPECT_EQ(capacity_with(job, FedFrom::tails).verdict, Verdict::meets);
    EXPECT_EQ(capacity_with(job, FedFrom::new_board).verdict, Verdict::meets);
}

TEST(IntakeCapacity, AFuseNobodyReadIsTheSmallestMet) {
    site::Job job = house_drawing(45);
    job.intake.service_fuse.reset();
    const auto found = capacity_with(job);
    EXPECT_DOUBLE_EQ(found.limit, 60);
    EXPECT_EQ(found.verdict, Verdict::caution);
    EXPECT_TRUE(capacity_says(found, "read it"));
}

TEST(IntakeCapacity, TheHousesOwnCircuitsServeWhereNothingIsMeasured) {
    site::Job job = support::plain_job();
    job.intake.demand = {};
    site::Circuit ring;
    ring.kind = site::CircuitKind::socket_ring;
    site::Circuit shower;
    shower.kind = site::CircuitKind::shower;
    job.buildings[0].circuits = {ring, shower};
    const auto found = capacity_with(job);
    EXPECT_DOUBLE_EQ(found.value, 32 + 50 + 20);
    EXPECT_EQ(found.verdict, Verdict::caution);
}

TEST(IntakeCapacity, WhatSolarSendsBackIsNotDrawnFromTheIntake) {
    site::Job job = house_drawing(45);
    site::Circuit solar;
    solar.kind = site::CircuitKind::solar;
    solar.load_w = measured(9200.0);
    job.buildings[1].load = {};
    job.buildings[1].circuits = {solar};
    EXPECT_DOUBLE_EQ(capacity_with(job).value, 45);
    EXPECT_EQ(support::prepared(job).ib, amperes(40));
}

RC_GTEST_PROP(IntakeCapacity, OnlyTheRunAloneCanFailWhateverTheHouseDraws, ()) {
    const site::Job job = support::random_demand_job(*rc::gen::arbitrary<unsigned>());
    const auto setting = support::prepared(job);
    auto scheme = support::scheme(support::cable(2, 25), study::Protective::armour,
                                  support::breaker("B", 32));
    scheme.fed_from = *rc::gen::element(FedFrom::spare_way, FedFrom::tails);
    Silent silent;
    const study::Figures<Silent> none;
    const auto found = intake_capacity(silent, Case<Silent>{setting, scheme, none});
    const auto limit =
        demand::least_limit(silent, setting.house.limits, scheme.fed_from == FedFrom::spare_way);
    const bool alone = !within(setting.demand.number(), limit.number());
    RC_ASSERT((found.verdict == Verdict::fails) == alone);
    if (!setting.house.demand.best() && !alone) RC_ASSERT(found.verdict == Verdict::not_known);
    if (found.verdict == Verdict::meets) RC_ASSERT(found.use <= 1 + 2e-9);
    if (found.verdict != Verdict::meets) RC_ASSERT(std::string(found.says) != "");
}

}  // namespace
}  // namespace toft::rules
