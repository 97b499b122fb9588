#include "parts/fittings.h"

#include "drawing/conductor_colours.h"
#include "drawing/measure.h"
#include "picture/looking.h"

#include <gtest/gtest.h>

namespace toft::parts {
namespace {

using namespace picture;

using drawing::Box;

int rects_with(const drawing::Items& items, drawing::Colour stroke) {
    int count = 0;
    for (const drawing::Item& item : items) {
        const auto* rect = std::get_if<drawing::Rect>(&item.shape);
        count += rect && rect->style.stroke == stroke;
    }
    return count;
}

TEST(Fittings, ABoardShowsItsWaysAndTheChosenOne) {
    Board board{.box = {0, 0, 100, 40}};
    board.ways = 6;
    EXPECT_EQ(rects_with(board_items(board), drawing::palette::accent), 0);
    EXPECT_EQ(rects_with(board_items(board), drawing::palette::ink), 7);
    board.chosen = 5;
    EXPECT_EQ(rects_with(board_items(board), drawing::palette::accent), 1);
    EXPECT_TRUE(
        drawing::contains(drawing::grown(board.box, 2), drawing::box_of(board_items(board))));
}

TEST(Fittings, WaysStandInOrderInsideTheBoard) {
    const Board board{.box = {0, 0, 100, 40}};
    for (int way = 1; way < board.ways; ++way) {
        EXPECT_GT(way_centre(board, way).x, way_centre(board, way - 1).x);
    }
    EXPECT_LT(way_centre(board, board.ways - 1).x, board.box.right);
}

TEST(Fittings, TheProtectiveLineIsBandedInTwoColours) {
    const drawing::Items items = protective_line({{0, 0}, {50, 0}});
    bool green = false;
    bool yellow = false;
    for (const drawing::Item& item : items) {
        const auto& line = std::get<drawing::Polyline>(item.shape);
        green =
            green || (line.style.stroke == drawing::conductor::green && !line.style.dash.empty());
        yellow = yellow || line.style.stroke == drawing::conductor::yellow;
    }
    EXPECT_TRUE(green && yellow);
}

TEST(Fittings, ARodReachesItsLength) {
    const Box box = drawing::box_of(rod({100, 50}, 90));
    EXPECT_NEAR(box.top, 50, 1);
    EXPECT_NEAR(box.bottom, 140, 1);
}

TEST(Fittings, ABreakHidesTheLineItCuts) {
    const drawing::Items items = break_mark({100, 100}, 40, drawing::palette::soil);
    const auto& area = std::get<drawing::Polygon>(items.front().shape);
    EXPECT_EQ(area.style.fill, drawing::palette::soil);
    const Box box = drawing::box_of(items);
    EXPECT_NEAR(box.height(), 40, 2);
    EXPECT_TRUE(box.left < 100 && box.right > 100);
}

TEST(Fittings, TerminalsPipesAndCablesKeepToTheirPlace) {
    EXPECT_TRUE(
        drawing::contains(Box{-1, -1, 71, 9}, drawing::box_of(terminal_bar({0, 0, 70, 8}))));
    EXPECT_NEAR(drawing::box_of(pipe({{0, 0}, {0, 60}}, 8)).width(), 8, 0.5);
    EXPECT_NEAR(drawing::box_of(armoured_line({{0, 0}, {60, 0}})).height(), 6, 0.5);
}

}  // namespace
}  // namespace toft::parts
