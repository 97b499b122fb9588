#include "answer/demand.h"

#include "support/jobs.h"
#include "support/questions.h"

#include <gtest/gtest.h>

namespace toft::answer {
namespace {

using support::measured;
using support::question_of;

site::Circuit drawing_watts(site::CircuitKind kind, double watts) {
    site::Circuit c;
    c.name = site::word(kind);
    c.kind = kind;
    c.load_w = measured(watts);
    c.power_factor = measured(1.0);
    return c;
}

/// A workshop of two socket circuits beside a measured house behind 80 A.
site::Job workshop_job() {
    site::Job job = support::plain_job();
    job.buildings[1].load = {};
    job.buildings[1].circuits = {drawing_watts(site::CircuitKind::socket_ring, 4600),
                                 drawing_watts(site::CircuitKind::socket_radial, 2300)};
    job.intake.service_fuse->rating = amperes(80);
    job.intake.demand = measured(amperes(38));
    job.intake.looped = site::Answer::no;
    return job;
}

DemandAnswer demand_answered(const site::Job& job) { return demand_of(support::prepared(job)); }

TEST(DemandAnswers, HoldEveryBuildingInEveryScenario) {
    const DemandAnswer d = demand_answered(workshop_job());
    EXPECT_EQ(d.scenario, "likely");
    EXPECT_NEAR(d.run_a, 24, 1e-9);
    ASSERT_EQ(d.buildings.size(), 2u);
    EXPECT_TRUE(d.buildings[0].scenarios.empty());  // the house states no circuits
    ASSERT_EQ(d.buildings[1].scenarios.size(), 3u);
    EXPECT_EQ(d.buildings[1].premises, "household");
    EXPECT_EQ(d.buildings[1].scenarios[2].scenario, "everything");
    EXPECT_NEAR(d.buildings[1].scenarios[2].total_a, 30, 1e-9);
}

TEST(DemandAnswers, SayWhatEveryPartHasLeftByEveryWay) {
    site::Job job = workshop_job();
    job.intake.agreed = measured(amperes(60));
    job.intake.tails = measured(square_millimetres(25));
    const DemandAnswer d = demand_answered(job);
    ASSERT_EQ(d.limits.size(), 2u);
    EXPECT_EQ(d.limits[0].part, "operator's fuse");
    EXPECT_TRUE(d.limits[0].known);
    EXPECT_EQ(d.limits[1].part, "tails");
    ASSERT_EQ(d.house.size(), 2u);
    EXPECT_EQ(d.house[0].way, "measured");
    EXPECT_EQ(d.house[0].left_a, (std::vector<double>{42, 62}));
    EXPECT_EQ(d.house[1].way, "declared");
    EXPECT_EQ(d.house[1].left_a, (std::vector<double>{20, 40}));
}

TEST(DemandAnswers, SayWhetherTheOperatorIsAskedOrTold) {
    site::Job job = workshop_job();
    EXPECT_EQ(demand_answered(job).notice, "nothing to ask or tell");
    job.buildings[1].circuits = {drawing_watts(site::CircuitKind::heat_pump, 4600)};
    EXPECT_EQ(demand_answered(job).notice, "tell after");  // 58 A
    job.buildings[1].circuits.push_back(drawing_watts(site::CircuitKind::heat_pump, 690));
    EXPECT_EQ(demand_answered(job).notice, "ask first");  // 61 A
}

TEST(DemandAnswers, TheOperatorsShareOfTheListIsTheSameAsTheAnswers) {
    site::Job job = workshop_job();
    job.buildings[1].circuits.push_back(drawing_watts(site::CircuitKind::vehicle_charging, 7360));
    const Answer a = design(question_of(job));
    ASSERT_FALSE(a.schemes.empty());
    EXPECT_EQ(a.demand.notice, "ask first");
    for (const NoticeAnswer& notice : a.demand.notices) {
        bool told = false;
        for (const TellAnswer& t : a.schemes.front().tell) {
            told = told || (t.who == "network operator" && t.why == notice.why);
        }
        EXPECT_TRUE(told) << notice.why;
    }
}

TEST(DemandAnswers, AnUnknownFuseIsTheSmallestMetAndSaidToBe) {
    site::Job job = workshop_job();
    job.intake.service_fuse.reset();
    const DemandAnswer d = demand_answered(job);
    EXPECT_FALSE(d.limits[0].known);
    EXPECT_EQ(d.limits[0].carries_a, 60);
    EXPECT_EQ(d.notice, "ask first");
}

}  // namespace
}  // namespace toft::answer
