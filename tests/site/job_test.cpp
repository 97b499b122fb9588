#include "site/job.h"

#include "support/jobs.h"

#include <gtest/gtest.h>

namespace toft::site {
namespace {

TEST(Job, FindsItsBuildingsById) {
    const Job job = support::plain_job();
    EXPECT_EQ(find_building(job, "shed"), &job.buildings[1]);
    EXPECT_EQ(find_building(job, "house"), &job.buildings[0]);
    EXPECT_EQ(find_building(job, "barn"), nullptr);
    EXPECT_EQ(building_index(job, "shed"), 1u);
}

TEST(Fact, IsUnknownUntilStated) {
    const Fact<Ohms> fact;
    EXPECT_FALSE(fact.known);
    EXPECT_FALSE(fact.single());
}

TEST(Fact, WithTwoFiguresIsNotASingleOne) {
    EXPECT_TRUE(support::measured(ohms(0.2)).single());
    EXPECT_FALSE(support::between(ohms(0.2), ohms(0.3)).single());
}

TEST(Fact, NothingIsAnsweredBeforeTheSurvey) {
    const Building building;
    for (Answer answer :
         {building.stands_in_ground, building.livestock, building.wet_floor, building.barefoot,
          building.vehicle_outdoors, building.spread_of_fire_risk}) {
        EXPECT_EQ(answer, Answer::unknown);
    }
    EXPECT_FALSE(Intake{}.ze.known);
    EXPECT_FALSE(Intake{}.board.spare_ways.known);
}

}  // namespace
}  // namespace toft::site
