#include "lever/change.h"

#include "support/catalogue.h"
#include "support/jobs.h"

#include <gtest/gtest.h>

namespace toft::lever {
namespace {

TEST(Change, LooksAtTheBuildingThatTheRunFeeds) {
    const site::Job job = support::plain_job();
    const Ground ground{support::catalogue(), job};
    EXPECT_EQ(ground.building().id, job.runs[0].to);
    EXPECT_EQ(&ground.building(), &job.buildings[ground.place()]);
}

TEST(Change, ABuildingWithoutANameGoesByItsId) {
    site::Building b;
    b.id = "shed";
    EXPECT_EQ(name_of(b), "shed");
    b.name = "Potting shed";
    EXPECT_EQ(name_of(b), "Potting shed");
}

TEST(Change, FiguresComeFromTheTables) {
    const site::Job job = support::plain_job();
    const Ground ground{support::catalogue(), job};
    EXPECT_EQ(value_of(ground, "soft-start"), 3);
    EXPECT_EQ(value_of(ground, "bigger-bonding"), 10);
}

}  // namespace
}  // namespace toft::lever
