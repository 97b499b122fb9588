#include "lever/asking.h"

#include <gtest/gtest.h>

namespace toft::lever {
namespace {

TEST(MetalAndReach, OnlyPipesTakeAPlasticSectionAndOnlyOnce) {
    site::Job job = support::plain_job();
    site::Metalwork pipe;
    pipe.what = site::Metal::gas_pipe;
    site::Metalwork steel;
    steel.what = site::Metal::structural_steel;
    job.buildings[1].metalwork = {steel, pipe};
    job.buildings[1].reach_of_house_earth = support::measured(metres(5));
    const Changes all = changes_of(metal_and_reach, job);
    ASSERT_EQ(all.size(), 1u);
    EXPECT_EQ(all[0].where, "gas pipe");
    EXPECT_EQ(all[0].job.buildings[1].metalwork[1].insulating_section, site::Answer::yes);
    EXPECT_TRUE(changes_of(metal_and_reach, all[0].job).empty());
}

TEST(MetalAndReach, ATapWithinReachMayBeMovedToTheEdgeOfIt) {
    site::Job job = support::plain_job();
    job.buildings[1].reach_of_house_earth = support::measured(metres(0.5));
    const Changes all = changes_of(metal_and_reach, job);
    const Change* tap = change_of(all, "move-tap");
    ASSERT_NE(tap, nullptr);
    EXPECT_EQ(tap->job.buildings[1].reach_of_house_earth.low,
              support::catalogue().limits.reach.value);
}

}  // namespace
}  // namespace toft::lever
