#include "lever/asking.h"

#include <gtest/gtest.h>

namespace toft::lever {
namespace {

site::Job house_in_order() {
    site::Job job = support::plain_job();
    job.intake.main_bonding = support::measured(square_millimetres(10));
    job.intake.earthing_conductor = support::measured(square_millimetres(16));
    job.intake.board.behind_rcd = support::measured(amperes(0));
    job.intake.board.spare_ways = support::measured(2.0);
    return job;
}

TEST(HouseWork, AHouseInOrderNeedsNone) {
    EXPECT_TRUE(changes_of(house_work, house_in_order()).empty());
}

TEST(HouseWork, ThinConductorsAreReplaced) {
    site::Job job = house_in_order();
    job.intake.main_bonding = support::measured(square_millimetres(6));
    job.intake.earthing_conductor = {};
    const Changes all = changes_of(house_work, job);
    ASSERT_EQ(all.size(), 2u);
    EXPECT_EQ(all[0].job.intake.main_bonding.low, square_millimetres(10));
    EXPECT_EQ(all[1].job.intake.earthing_conductor.low, square_millimetres(16));
}

TEST(HouseWork, AWayBehindAResidualCurrentDeviceMayComeOutOrItBeDelayed) {
    site::Job job = house_in_order();
    job.intake.board.behind_rcd = support::measured(milliamperes(30));
    const Changes all = changes_of(house_work, job);
    ASSERT_EQ(all.size(), 2u);
    EXPECT_EQ(all[0].job.intake.board.behind_rcd.high, amperes(0));
    EXPECT_EQ(all[1].job.intake.board.behind_rcd.high, milliamperes(100));
    EXPECT_EQ(all[1].job.intake.board.rcd_delayed, site::Answer::yes);
}

TEST(HouseWork, AFullBoardMayGetAWay) {
    site::Job job = house_in_order();
    job.intake.board.spare_ways = support::measured(0.0);
    EXPECT_EQ(keys_of(house_work, job), std::vector<std::string>{"free-way"});
}

}  // namespace
}  // namespace toft::lever
