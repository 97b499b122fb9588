#include "board/wires.h"

#include "drawing/conductor_colours.h"
#include "picture/looking.h"

#include <gtest/gtest.h>

namespace toft::board {
namespace {

TEST(Wires, LinesAreBrownBlackAndGrey) {
    EXPECT_EQ(line_colour(0), drawing::conductor::brown);
    EXPECT_EQ(line_colour(1), drawing::conductor::black);
    EXPECT_EQ(line_colour(2), drawing::conductor::grey);
}

int screws_on(const drawing::Items& items) {
    int count = 0;
    for (const drawing::Item& item : items)
        count += std::holds_alternative<drawing::Circle>(item.shape);
    return count;
}

TEST(Wires, AStripHasAScrewForEachConductorInAsManyRowsAsItNeeds) {
    for (const int screws : {2, 5, 24, 41, 80}) {
        const Strip strip = terminal_strip(screws, 50, 260, 10);
        EXPECT_GE(screws_on(strip.items), screws);
        EXPECT_LE(screws_on(strip.items), screws + 1);
        const drawing::Box box = drawing::box_of(strip.items);
        EXPECT_LE(box.right, 261);
        EXPECT_LE(box.bottom, strip.foot);
    }
}

TEST(Wires, ANumberFillsItsRing) {
    for (const int number : {0, 1, 40}) {
        const drawing::Items items = numbered_ring(number, {20, 20});
        const drawing::Box ring{11, 11, 29, 29};
        EXPECT_EQ(picture::clashes(items, ring), "");
        EXPECT_TRUE(picture::says(items, number > 0 ? std::to_string(number) : "all"));
    }
}

}  // namespace
}  // namespace toft::board
