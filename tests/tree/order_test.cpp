// From the house outwards.

#include "tree/order.h"

#include "support/trees.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace toft::tree {
namespace {

using support::the_house;

TEST(Order, ARunComesAfterTheOneThatFeedsItHoweverTheJobListsThem) {
    site::Job job = support::tree_job({the_house, 0, 1});
    std::reverse(job.runs.begin(), job.runs.end());
    const auto order = outwards(job);
    ASSERT_EQ(order.size(), 3u);
    EXPECT_EQ(job.runs[order[0].run].id, "r0");
    EXPECT_EQ(job.runs[order[1].run].id, "r1");
    EXPECT_EQ(job.runs[order[2].run].id, "r2");
    EXPECT_EQ(order[0].parent, from_house);
    EXPECT_EQ(order[1].parent, 0u);
    EXPECT_EQ(order[2].parent, 1u);
}

TEST(Order, RunsFromOneBoardStandAsTheJobListsThem) {
    const site::Job job = support::tree_job({the_house, the_house, 0, 0});
    const auto order = outwards(job);
    ASSERT_EQ(order.size(), 4u);
    for (std::size_t i = 0; i < order.size(); ++i) EXPECT_EQ(order[i].run, i);
    EXPECT_EQ(order[1].parent, from_house);
    EXPECT_EQ(order[2].parent, 0u);
    EXPECT_EQ(order[3].parent, 0u);
}

TEST(Order, TheWayToABuildingIsAllRunsBeforeItFromTheHouse) {
    const auto order = outwards(support::tree_job({the_house, 0, 1, the_house}));
    std::size_t last = 0;
    while (order[last].run != 2) ++last;
    const auto way = way_to(order, last);
    ASSERT_EQ(way.size(), 2u);
    EXPECT_EQ(order[way[0]].run, 0u);
    EXPECT_EQ(order[way[1]].run, 1u);
    EXPECT_TRUE(way_to(order, 0).empty());
}

}  // namespace
}  // namespace toft::tree
