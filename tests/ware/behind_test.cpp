#include "ware/behind.h"

#include "ware/bills.h"

#include <gtest/gtest.h>

namespace toft::ware {
namespace {

/// A row of two runs: house to "a", "a" to "b", whose building is called Barn.
struct Row2 {
    HandMade first{"Workshop"};
    HandMade second{"Barn"};
    site::Job job = first.job;

    Row2() {
        first.run().to = "a";
        second.run().from = "a";
        second.run().to = "b";
        job.buildings.resize(1);
        site::Building a;
        a.id = "a";
        site::Building b;
        b.id = "b";
        job.buildings.push_back(a);
        job.buildings.push_back(b);
    }
    std::vector<RunBill> parts() const { return {first.part(), second.part()}; }
};

TEST(Behind, TheBoardThatARunStartsAtFeedsItsBuilding) {
    const Row2 row;
    EXPECT_EQ(behind(row.job, row.parts(), 0).feeds, std::vector<std::string>{"Barn"});
    EXPECT_TRUE(behind(row.job, row.parts(), 1).feeds.empty());
}

TEST(Behind, SpareWaysAreTheBuildingsOwnAndTheMostThatIsAskedFor) {
    Row2 row;
    row.job.buildings[1].spare_ways = {true, 2, 4};
    EXPECT_EQ(behind(row.job, row.parts(), 0).spare_ways, 4);
    EXPECT_EQ(behind(row.job, row.parts(), 1).spare_ways, 0);
}

TEST(Behind, SolarFarOutFeedsBackThroughEveryBoardBeforeIt) {
    Row2 row;
    EXPECT_FALSE(behind(row.job, row.parts(), 0).gives);
    site::Circuit panels;
    panels.kind = site::CircuitKind::solar;
    row.job.buildings[2].circuits = {panels};
    EXPECT_TRUE(behind(row.job, row.parts(), 0).gives);
    EXPECT_TRUE(behind(row.job, row.parts(), 1).gives);
    row.job.buildings[1].circuits = {panels};
    row.job.buildings[2].circuits.clear();
    EXPECT_FALSE(behind(row.job, row.parts(), 1).gives);
}

}  // namespace
}  // namespace toft::ware
