#include "trench/plan.h"

#include "trench/digging_jobs.h"

#include <gtest/gtest.h>

namespace toft::trench {
namespace {

const BuildingSpot& spot(const Plan& plan, const std::string& id) {
    for (const BuildingSpot& one : plan.buildings) {
        if (one.building->id == id) return one;
    }
    return plan.buildings.front();
}

TEST(Plan, StatedBuildingsStandWhereTheJobSays) {
    const Works works = works_of_example("hurdle-farm-yard");
    const Plan plan = plan_of(works);
    EXPECT_TRUE(plan.stated);
    EXPECT_EQ(plan.buildings.size(), 7u);
    EXPECT_NEAR(spot(plan, "pump").at.east.number(), 35, 1e-12);
    EXPECT_NEAR(spot(plan, "pump").at.north.number(), -90, 1e-12);
    EXPECT_NEAR(apart(spot(plan, "workshop").at, spot(plan, "barn").at).number(), std::hypot(36, 8),
                1e-12);
}

TEST(Plan, LegsShareTheWayByTheirLengths) {
    const Works works = works_of_example("demo");
    const Plan plan = plan_of(works);
    const double whole = std::hypot(22, 9);
    EXPECT_NEAR(apart(plan.legs[0].from, plan.legs[0].to).number(), whole * 7 / 30, 1e-9);
    EXPECT_NEAR(apart(plan.legs[1].from, plan.legs[1].to).number(), whole * 21 / 30, 1e-9);
    EXPECT_NEAR(plan.legs[2].to.east.number(), 22, 1e-9);
    EXPECT_NEAR(plan.legs[2].to.north.number(), 9, 1e-9);
}

TEST(Plan, WithoutPositionsARunIsLaidOutStraightAtItsLength) {
    const Works works = works_of_example("tt-shed");
    const Plan plan = plan_of(works);
    EXPECT_FALSE(plan.stated);
    EXPECT_NE(plan.says.front().find("Not to plan: positions are not stated"), std::string::npos);
    EXPECT_NEAR(apart(spot(plan, "house").at, spot(plan, "shed").at).number(), 20, 1e-9);
    EXPECT_NEAR(apart(plan.legs[1].from, plan.legs[1].to).number(), 14, 1e-9);
}

TEST(Plan, BuildingsOfATreeWithoutPositionsDoNotStandOnOneAnother) {
    const picture::Example& one = picture::example("hurdle-farm-yard");
    site::Job job = one.job;
    for (site::Building& building : job.buildings) {
        building.at_x_m.reset();
        building.at_y_m.reset();
    }
    const Works works = works_of({shop(), job, &one.answer.schemes.front()});
    const Plan plan = plan_of(works);
    for (std::size_t i = 0; i < plan.buildings.size(); ++i) {
        for (std::size_t j = 0; j < i; ++j) {
            EXPECT_GT(apart(plan.buildings[i].at, plan.buildings[j].at).number(), 10);
        }
    }
}

TEST(Plan, LegsOfOneTrenchGoOneWay) {
    const Works works = works_of_example("tansy-bank");
    const Plan plan = plan_of(works);
    for (const Trench& trench : works.trenches) {
        for (const std::size_t leg : trench.legs) {
            EXPECT_EQ(plan.legs[leg].from.east, plan.legs[trench.legs.front()].from.east);
            EXPECT_EQ(plan.legs[leg].to.north, plan.legs[trench.legs.front()].to.north);
        }
    }
    for (std::size_t i = 1; i < plan.legs.size(); ++i) {
        if (works.legs[i].number == 1) continue;
        EXPECT_NEAR(apart(plan.legs[i - 1].to, plan.legs[i].from).number(), 0, 1e-9);
    }
}

TEST(Plan, LegsTooShortForThePositionsAreDoubted) {
    site::Job job = support::plain_job();
    for (site::Building& building : job.buildings) {
        building.at_x_m = building.origin ? 0.0 : 40.0;
        building.at_y_m = 0.0;
    }
    const Works works = works_of_job(job);
    const Plan plan = plan_of(works);
    ASSERT_EQ(plan.says.size(), 2u);
    EXPECT_NE(plan.says[1].find("A: its legs add up to 30 m"), std::string::npos);
}

}  // namespace
}  // namespace toft::trench
