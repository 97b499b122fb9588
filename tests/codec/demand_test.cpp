#include "codec/demand.h"

#include <gtest/gtest.h>

namespace toft::codec {
namespace {

answer::DemandAnswer demand_answer() {
    answer::DemandAnswer d;
    d.scenario = "likely";
    d.run_a = 24;
    answer::BuildingDemandAnswer barn{"barn", "Barn", "household", {}};
    barn.scenarios = {{"today", {10, 8, 6}, 3.5, 10}, {"likely", {12, 9, 7}, 4, 12}};
    d.buildings = {{"house", "House", "household", {}}, barn};
    d.limits = {{"operator's fuse", 80, true}, {"tails", 100, true}};
    d.house = {{"measured", 90, {-10, 10}}};
    d.notice = "ask first";
    d.notices = {{"before", "because"}};
    return d;
}

TEST(DemandText, HoldsLinesNeutralAndTotalOfEachScenario) {
    const Json barn = demand_json(demand_answer())["buildings"]["barn"];
    EXPECT_EQ(barn["premises"], "household");
    EXPECT_EQ(barn["today"]["lines_a"], Json::parse("[10.0, 8.0, 6.0]"));
    EXPECT_EQ(barn["today"]["neutral_a"], 3.5);
    EXPECT_EQ(barn["likely"]["total_a"], 12);
    EXPECT_TRUE(barn["everything"].is_null());
}

TEST(DemandText, ABuildingOfUnknownLoadHasNull) {
    const Json house = demand_json(demand_answer())["buildings"]["house"];
    for (const char* scenario : {"today", "likely", "everything"}) {
        EXPECT_TRUE(house.at(scenario).is_null()) << scenario;
    }
}

TEST(DemandText, WhatIsLeftStandsBesideItsPartAndMayBeNegative) {
    const Json json = demand_json(demand_answer());
    EXPECT_EQ(json["limits"][1]["carries_a"], 100);
    EXPECT_EQ(json["house"][0]["left"][0]["part"], "operator's fuse");
    EXPECT_EQ(json["house"][0]["left"][0]["left_a"], -10);
    EXPECT_EQ(json["house"][0]["left"][1]["left_a"], 10);
}

TEST(DemandText, TheOperatorsPartHasItsReasons) {
    const Json json = demand_json(demand_answer())["operator"];
    EXPECT_EQ(json["do"], "ask first");
    EXPECT_EQ(json["reasons"][0]["when"], "before");
    EXPECT_EQ(json["reasons"][0]["why"], "because");
}

}  // namespace
}  // namespace toft::codec
