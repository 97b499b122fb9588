#include "lever/asking.h"

#include <gtest/gtest.h>

namespace toft::lever {
namespace {

TEST(OtherRoute, TheStraightWayIsAsLongAsThePlanSays) {
    site::Job job = support::plain_job();
    EXPECT_TRUE(keys_of(other_route, job).empty());
    job.buildings[1].at_x_m = 12;
    job.buildings[1].at_y_m = 16;
    const Changes all = changes_of(other_route, job);
    const Change* straight = change_of(all, "straight-route");
    ASSERT_NE(straight, nullptr);
    double length = 0;
    for (const site::Leg& leg : straight->job.runs[0].legs) length += leg.length.high.number();
    EXPECT_NEAR(length, 20, 1e-12);
    EXPECT_TRUE(keys_of(other_route, straight->job).empty() ||
                !change_of(changes_of(other_route, straight->job), "straight-route") ||
                length > 20);
}

TEST(OtherRoute, ADriveMayGiveWayToLawnAndLawnToNothing) {
    site::Job job = support::plain_job();
    job.runs[0].legs[0].surface = site::Surface::drive;
    const Changes all = changes_of(other_route, job);
    ASSERT_EQ(all.size(), 1u);
    EXPECT_EQ(all[0].key, "soft-ground");
    EXPECT_EQ(all[0].job.runs[0].legs[0].surface, site::Surface::lawn);
    EXPECT_TRUE(changes_of(other_route, all[0].job).empty());
}

}  // namespace
}  // namespace toft::lever
