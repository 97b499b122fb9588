#include "board/way_list.h"

#include "board/boards.h"

#include <gtest/gtest.h>

namespace toft::board {
namespace {

const std::vector<std::string> nothing_assumed;

TEST(WayList, NoRowIsLostAndNoneCoversAnother) {
    const Example one = many_ways("demo", 40);
    const auto ways = ways_in(one);
    for (const auto& [wide, columns] : {std::pair{300.0, 1}, {340.0, 1}, {714.0, 2}}) {
        const ListOf of{ways, 1, nothing_assumed};
        const WayList list = way_list(of, {10, 100, 10 + wide, 100}, columns);
        EXPECT_EQ(picture::count_kind(list.items, "way"), 40);
        EXPECT_EQ(picture::clashes(list.items, {10, 100, 10 + wide, list.foot}), "");
        for (int i = 1; i <= 40; ++i) {
            EXPECT_TRUE(picture::says(list.items, std::to_string(100 + i))) << i;
        }
        EXPECT_FALSE(picture::says(list.items, "…")) << "names are whole";
    }
}

TEST(WayList, TwoColumnsAreNearlyOfOneHeight) {
    const Example one = many_ways("demo", 40);
    const auto ways = ways_in(one);
    const ListOf of{ways, 1, nothing_assumed};
    const double single = way_list(of, {0, 0, 344, 0}, 1).foot;
    const double both = way_list(of, {0, 0, 714, 0}, 2).foot;
    EXPECT_LT(both, 0.56 * single);
    EXPECT_GE(both, 0.49 * single);
}

bool has(const std::vector<std::string>& lines, const std::string& words) {
    for (const std::string& line : lines) {
        if (line.find(words) != std::string::npos) return true;
    }
    return false;
}

TEST(WayList, ADesignedWayIsToldWhole) {
    const Example one = many_ways("demo", 3);
    const auto ways = ways_in(one);
    const auto lines = way_lines(ways[0], {ways, 3, nothing_assumed});
    for (const char* words :
         {"32 A type B RCBO, 6 kA, BS EN 61009", "residual current 30 mA, type A",
          "2.5 mm² flat twin and earth, earth core 1.5 mm², 12.5 m", "on L1", "2.47 of 5 %",
          "R1 + R2 cold"}) {
        EXPECT_TRUE(has(lines, words)) << words;
    }
}

TEST(WayList, WhatIsOpenSaysWhy) {
    const Example one = many_ways("demo", 3);
    const auto ways = ways_in(one);
    const std::vector<std::string> assumed{"circuit " + ways[2].name +
                                           " is not judged: its length is not stated"};
    const auto open = way_lines(ways[2], {ways, 1, assumed});
    EXPECT_TRUE(has(open, "device not known: chosen with the circuit"));
    EXPECT_TRUE(has(open, "cable not known: its length is not stated"));
    EXPECT_TRUE(has(way_lines(ways[1], {ways, 1, assumed}), "RCD beside it 30 mA, type A"));
}

}  // namespace
}  // namespace toft::board
