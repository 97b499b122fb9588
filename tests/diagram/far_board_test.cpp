#include "diagram/far_board.h"

#include "diagram/sheet.h"
#include "drawing/measure.h"

#include <gtest/gtest.h>

namespace toft::diagram {
namespace {

drawing::Items far_board(const Example& one, const answer::SchemeAnswer& scheme) {
    return drawn(
        [&](Ladder& ladder) { draw_far_board(picture::set_stage(one.job, &scheme), ladder); });
}

TEST(FarBoard, AWayForEachCircuitByName) {
    const Example& one = example("demo");
    const drawing::Items items = far_board(one, one.answer.schemes[0]);
    const auto& circuits = one.job.buildings[1].circuits;
    ASSERT_EQ(circuits.size(), 4u);
    EXPECT_EQ(count_kind(items, "way"), 4);
    EXPECT_EQ(count_kind(items, "rcbo"), 4);
    for (const site::Circuit& circuit : circuits) EXPECT_TRUE(says(items, circuit.name));
    EXPECT_TRUE(says(items, "30 mA, type A"));
    EXPECT_TRUE(says(items, "2000 W"));
}

TEST(FarBoard, AMainSwitchAndAtLeastOneWayAlways) {
    each_scheme([](const Example& one, const answer::SchemeAnswer& scheme) {
        const drawing::Items items = far_board(one, scheme);
        EXPECT_EQ(count_kind(items, "switch-disconnector"), 1);
        EXPECT_GE(count_kind(items, "way"), 1);
        EXPECT_TRUE(says(items, "main switch"));
    });
}

TEST(FarBoard, ACircuitThatNoRcdCoversIsDrawnWithoutOne) {
    Example one = example("demo");
    answer::SchemeAnswer& scheme = one.answer.schemes[0];
    scheme.building.rcds.resize(1);
    scheme.building.rcds[0].covers = {"Sockets"};
    const drawing::Items items = far_board(one, scheme);
    EXPECT_EQ(count_kind(items, "rcbo"), 1);
    EXPECT_EQ(count_kind(items, "circuit-breaker"), 4);
    EXPECT_TRUE(says(items, "no residual current device"));
}

TEST(FarBoard, AStatedDeviceIsNamedAndAnOpenOneNotInvented) {
    Example one = example("demo");
    one.job.buildings[1].circuits[0].device = site::NamedDevice{"BS EN 60898", "B", amperes(16)};
    const drawing::Items items = far_board(one, one.answer.schemes[0]);
    EXPECT_TRUE(says(items, "16 A type B BS EN 60898"));
    EXPECT_TRUE(says(items, "overcurrent rating: chosen with the circuit"));
    one.job.buildings[1].circuits[0].device->curve = "";
    const drawing::Items fused = far_board(one, one.answer.schemes[0]);
    EXPECT_EQ(count_kind(fused, "rcbo"), 3);
    EXPECT_EQ(count_kind(fused, "fuse"), 1);
    EXPECT_EQ(count_kind(fused, "rcd"), 1);
}

TEST(FarBoard, AFusedWayWithItsRcdHasRoomOnANarrowSheetToo) {
    Example one = example("demo");
    one.job.buildings[1].circuits[0].device = site::NamedDevice{"BS 88-3", "", amperes(16)};
    for (const double width : {narrowest_sheet, 360.0, paper_wide}) {
        const Columns c = columns_for(width);
        const drawing::Items items = drawn(
            [&](Ladder& ladder) {
                draw_far_board(picture::set_stage(one.job, &one.answer.schemes[0]), ladder);
            },
            width);
        const drawing::Group* way = find_kind(items, "way");
        ASSERT_NE(way, nullptr);
        EXPECT_LT(drawing::box_of(way->items).right, c.words);
        // What guards the way ends before the arrow's head begins.
        const drawing::Group* rcd = find_kind(way->items, "rcd");
        ASSERT_NE(rcd, nullptr);
        EXPECT_LE(drawing::box_of(rcd->items).right, c.words - 6 - 9 + pen_new().width);
    }
}

TEST(FarBoard, WhatTheSchemeAloneNamesIsAWayToo) {
    Example one = example("demo");
    one.job.buildings[1].circuits.clear();
    answer::SchemeAnswer& scheme = one.answer.schemes[0];
    scheme.building.rcds.resize(1);
    scheme.building.rcds[0].covers = {"every circuit"};
    const std::vector<Way> ways = ways_of(picture::set_stage(one.job, &scheme));
    ASSERT_EQ(ways.size(), 1u);
    EXPECT_EQ(ways[0].name, "every circuit");
    EXPECT_NE(ways[0].rcd, nullptr);
}

}  // namespace
}  // namespace toft::diagram
