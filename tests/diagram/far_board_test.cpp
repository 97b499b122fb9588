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

/// The demo before any of its circuits is designed.
Example undesigned() {
    Example one = example("demo");
    one.answer.schemes[0].building.circuits.clear();
    return one;
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
    Example one = undesigned();
    answer::SchemeAnswer& scheme = one.answer.schemes[0];
    scheme.building.rcds.resize(1);
    scheme.building.rcds[0].covers = {"Sockets"};
    const drawing::Items items = far_board(one, scheme);
    EXPECT_EQ(count_kind(items, "rcbo"), 1);
    EXPECT_EQ(count_kind(items, "circuit-breaker"), 4);
    EXPECT_TRUE(says(items, "no residual current device"));
}

TEST(FarBoard, AStatedDeviceIsNamedAndAnOpenOneNotInvented) {
    Example one = undesigned();
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
    Example one = undesigned();
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

/// The demo with one circuit of that kind.
Example with_kind(site::CircuitKind kind) {
    Example one = undesigned();
    one.job.buildings[1].circuits.resize(1);
    one.job.buildings[1].circuits[0].kind = kind;
    return one;
}

TEST(FarBoard, AMotorIsARingWithItsLetterAndASourceHangsOnItsInverter) {
    for (const double width : {narrowest_sheet, 360.0, paper_wide}) {
        const auto board = [&](const Example& one) {
            return drawn(
                [&](Ladder& ladder) {
                    draw_far_board(picture::set_stage(one.job, &one.answer.schemes[0]), ladder);
                },
                width);
        };
        const drawing::Items motor_way = board(with_kind(site::CircuitKind::motor));
        EXPECT_EQ(count_kind(motor_way, "motor"), 1);
        EXPECT_EQ(count_kind(motor_way, "inverter"), 0);
        const drawing::Items sun = board(with_kind(site::CircuitKind::solar));
        EXPECT_EQ(count_kind(sun, "inverter"), 1);
        EXPECT_EQ(count_kind(sun, "solar-generator"), 1);
        EXPECT_EQ(count_kind(board(with_kind(site::CircuitKind::battery)), "battery"), 1);
        Example fused = with_kind(site::CircuitKind::solar);
        fused.job.buildings[1].circuits[0].device = site::NamedDevice{"BS 88-3", "", amperes(16)};
        for (const drawing::Items& items : {motor_way, sun, board(fused)}) {
            const drawing::Group* way = find_kind(items, "way");
            ASSERT_NE(way, nullptr);
            EXPECT_LT(drawing::box_of(way->items).right, columns_for(width).words);
            const drawing::Group* shell = find_kind(items, "enclosure");
            ASSERT_NE(shell, nullptr);
            EXPECT_LE(drawing::box_of(way->items).bottom, drawing::box_of(shell->items).bottom);
        }
    }
}

TEST(FarBoard, ADesignedCircuitHasItsDeviceCableAndFigures) {
    Example one = example("demo");
    answer::CircuitAnswer design;
    design.number = 1;
    design.family = "flat twin and earth";
    design.live_mm2 = 2.5;
    design.cpc_mm2 = 1.5;
    design.length_m = 12;
    design.device = {"BS EN 61009", "B", "RCBO", 20, 6};
    design.drop_percent = answer::CircuitMatter{2.47, 5, 0.49};
    design.rise_percent = answer::CircuitMatter{2.01, 1, 2.01};
    one.answer.schemes[0].building.circuits = {design};
    const drawing::Items items = far_board(one, one.answer.schemes[0]);
    for (const char* words :
         {"1: Sockets", "RCBO 20 A type B BS EN 61009, 6 kA", "2.5 mm² flat twin and earth", "12 m",
          "2.47 of 5 %", "caution: past its limit: voltage rise"}) {
        EXPECT_TRUE(says(items, words)) << words;
    }
}

TEST(FarBoard, FortyWaysAreAllThereAndNothingCoversAnything) {
    Example one = example("demo");
    std::vector<site::Circuit>& circuits = one.job.buildings[1].circuits;
    circuits.assign(40, circuits.front());
    answer::SchemeAnswer& scheme = one.answer.schemes[0];
    scheme.building.rcds.resize(1);
    answer::CircuitAnswer design;
    design.family = "flat twin and earth";
    design.device = {"BS EN 61009", "B", "RCBO", 20, 6};
    design.drop_percent = answer::CircuitMatter{2.47, 5, 0.49};
    scheme.building.circuits.assign(40, design);
    const auto kinds = site::words<site::CircuitKind>().size();
    for (std::size_t i = 0; i < 40; ++i) {
        circuits[i].name =
            "Sockets along the north wall, under the window and bench " + std::to_string(100 + i);
        circuits[i].kind = static_cast<site::CircuitKind>(i % kinds);
        scheme.building.rcds[0].covers.push_back(circuits[i].name);
        scheme.building.circuits[i].number = static_cast<int>(i) + 1;
    }
    for (const double width : {narrowest_sheet, 360.0, paper_wide}) {
        const drawing::Items items = drawn(
            [&](Ladder& ladder) { draw_far_board(picture::set_stage(one.job, &scheme), ladder); },
            width);
        EXPECT_GE(count_kind(items, "way"), 40);
        EXPECT_EQ(picture::clashes(items, {0, -5, width, 1e5}), "");
        for (int i = 100; i < 140; ++i) EXPECT_TRUE(says(items, std::to_string(i))) << i;
    }
}

}  // namespace
}  // namespace toft::diagram
