#include "outage/grid.h"

#include "outage/looking.h"

#include <gtest/gtest.h>

namespace toft::outage {
namespace {

using guard::Certainty;

const Space phone{10, 350, 0, true, false};
const Space wide{44, 900, 0, false, true};

TEST(Grid, HeavyFaultsOfOneCircuitThatDarkenTheSameAreOneRow) {
    guard::Darkness dark = made_up(2);
    EXPECT_EQ(grid_rows(dark, 2).size(), 2u * 2 + 1);
    EXPECT_EQ(grid_rows(dark, 2)[1].name,
              "solid earth fault, overload or short circuit on sockets 1");
    dark.events[2].dark[1] = Certainty::no;  // the overload alone is milder
    EXPECT_EQ(grid_rows(dark, 2).size(), 2u * 2 + 1 + 2);
}

TEST(Grid, EveryRowShowsWhatItsEventsDarken) {
    const guard::Darkness dark = made_up(3);
    for (const GridRow& row : grid_rows(dark, 3)) {
        EXPECT_EQ(row.event->dark.size(), dark.parts.size());
    }
}

TEST(Grid, ColumnsKeepTheHouseAndLeaveOutCircuits) {
    const guard::Darkness few = made_up(3);
    EXPECT_EQ(columns_of(few, phone).parts.size(), 5u);
    EXPECT_EQ(columns_of(few, phone).left_out, 0u);
    const guard::Darkness many = made_up(100);
    const Columns c = columns_of(many, phone);
    EXPECT_EQ(c.circuits + c.left_out, 100u);
    EXPECT_TRUE(many.parts[c.parts.back()].house);
    EXPECT_LE(c.right(), phone.right + 1e-9);
    EXPECT_GT(columns_of(many, wide).circuits, c.circuits);
}

TEST(Grid, TheThreeCellsDifferWithoutColour) {
    const Box box{0, 0, 26, 18};
    const Items full = cell(box, Certainty::surely);
    const Items maybe = cell(box, Certainty::possibly);
    const Items empty = cell(box, Certainty::no);
    EXPECT_TRUE(std::get<Rect>(full.front().shape).style.fill.has_value());
    EXPECT_GT(maybe.size(), 3u);
    ASSERT_EQ(empty.size(), 1u);
    EXPECT_FALSE(std::get<Rect>(empty.front().shape).style.fill.has_value());
}

TEST(Grid, ARowForEachFaultStandsOnTheSheet) {
    const guard::Darkness dark = made_up(2);
    const Drawn drawn = grid(dark, columns_of(dark, wide), wide, 100);
    EXPECT_EQ(picture::count_kind(drawn.items, "fault"),
              static_cast<int>(grid_rows(dark, 2).size()));
    EXPECT_GT(drawn.foot, 100 + 5 * 20);
}

}  // namespace
}  // namespace toft::outage
