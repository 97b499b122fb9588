#include "edits.h"
#include "merge/merge.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace toft::merge {
namespace {

const std::string then = R"({"intake":{"ze_ohm":1},"buildings":[{"id":"house"},
    {"id":"shed","metalwork":[{"what":"fence"},{"what":"drain"}]}],
    "runs":[{"id":"r","legs":[{"n":1},{"n":2}]}]})";
const std::string now = R"({"buildings":[{"id":"barn"},{"id":"shed","metalwork":[{"what":"drain"}]},
    {"id":"house"}],"runs":[{"id":"q"},{"id":"r","legs":[{"n":1},{"n":5}]}]})";

std::string went(const std::string& pointer) { return follow(pointer, then, now).value_or("gone"); }

TEST(Follow, AFactIsFoundWhereItsBuildingStandsNow) {
    EXPECT_EQ(went(""), "");
    EXPECT_EQ(went("/intake/ze_ohm"), "/intake/ze_ohm") << "not stated now, but it has its place";
    EXPECT_EQ(went("/buildings/0"), "/buildings/2");
    EXPECT_EQ(went("/buildings/1/load_w"), "/buildings/1/load_w");
    EXPECT_EQ(went("/buildings/1/metalwork/1/material"), "/buildings/1/metalwork/0/material");
    EXPECT_EQ(went("/buildings/1/metalwork/0"), "gone");
    EXPECT_EQ(went("/runs/0/legs/1/depth_m"), "/runs/1/legs/1/depth_m");
}

TEST(Follow, WhatWasNoPlaceLeadsNowhere) {
    EXPECT_EQ(went("/buildings/7"), "gone");
    EXPECT_EQ(went("/buildings/01"), "gone");
    EXPECT_EQ(went("/buildings/x"), "gone");
    EXPECT_EQ(went("/buildings/99999999999999999999"), "gone");
    EXPECT_EQ(went("buildings"), "gone");
    EXPECT_EQ(went("/a~2"), "gone");
    EXPECT_EQ(went("/a~1b~0c"), "/a~1b~0c");
    EXPECT_FALSE(follow("", "{", "{}"));
}

RC_GTEST_PROP(Follow, ABuildingKeepsItsFactsThroughAnyEdit, ()) {
    testing::Mint mint;
    const Json before = testing::job(mint);
    const Json after = testing::edited(before, mint, testing::upto(6));
    for (std::size_t i = 0; i < before["buildings"].size(); ++i) {
        const Json& building = before["buildings"][i];
        std::string expected = "gone";
        for (std::size_t j = 0; j < after["buildings"].size(); ++j) {
            if (after["buildings"][j]["id"] == building["id"]) {
                expected = "/buildings/" + std::to_string(j) + "/load_w";
            }
        }
        const auto found =
            follow("/buildings/" + std::to_string(i) + "/load_w", before.dump(), after.dump());
        RC_ASSERT(found.value_or("gone") == expected);
    }
}

}  // namespace
}  // namespace toft::merge
