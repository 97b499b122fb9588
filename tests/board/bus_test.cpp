#include "board/bus.h"

#include "picture/looking.h"
#include "symbol/shapes.h"

#include <gtest/gtest.h>

namespace toft::board {
namespace {

TEST(Bus, FeedsEachPoleFromTheBarOfItsLine) {
    Bus bus(3, 100, nullptr);
    for (int i = 0; i < 6; ++i) bus.drop(i % 3, 20.0 + 36 * i);
    std::vector<drawing::Point> feet;
    const drawing::Items items = bus.drawn(0, false, feet);
    EXPECT_EQ(picture::count_kind(items, "line-wire"), 3 + 6);
    EXPECT_TRUE(feet.empty());
    EXPECT_EQ(picture::words_in(bus.letters()), "L1\nL2\nL3\nL1\nL2\nL3\n");
    EXPECT_LE(drawing::box_of(bus.letters()).bottom, bus.foot());
}

TEST(Bus, TheNextRailIsFedWhereTheLastOneEnds) {
    Bus first(1, 100, nullptr);
    first.drop(0, 20);
    std::vector<drawing::Point> feet;
    first.drawn(300, true, feet);
    ASSERT_EQ(feet.size(), 1u);
    EXPECT_EQ(feet[0].x, 300);
    const drawing::Point from = feet[0];
    Bus second(1, 220, &feet);
    second.drop(0, 60);
    bool met = false;
    for (const auto& line : symbol::all_of<drawing::Polyline>(second.drawn(300, false, feet))) {
        met = met || line.points.back() == from;
    }
    EXPECT_TRUE(met);
}

TEST(Bus, ALineThatFeedsNothingHereOrBelowIsNotDrawn) {
    Bus bus(3, 0, nullptr);
    bus.drop(0, 20);
    std::vector<drawing::Point> feet;
    EXPECT_EQ(picture::count_kind(bus.drawn(300, false, feet), "line-wire"), 1 + 1);
    EXPECT_EQ(picture::count_kind(bus.drawn(300, true, feet), "line-wire"), 3 + 1);
}

TEST(Bus, OneLineNeedsNoLettersButThoseOfTheMainSwitch) {
    Bus bus(1, 0, nullptr);
    bus.drop(0, 20);
    bus.letter("N", 50);
    EXPECT_EQ(picture::words_in(bus.letters()), "N\n");
}

}  // namespace
}  // namespace toft::board
