#include "board/key.h"

#include "board/boards.h"

#include <gtest/gtest.h>

namespace toft::board {
namespace {

TEST(KeyOfBoard, NamesEveryConductorByItsColourInsideTheSheet) {
    for (const double wide : {300.0, 340.0, 714.0}) {
        for (const int phases : {1, 3}) {
            parts::WordColumn column(10, 10 + wide, 20);
            set_key(phases, true, column);
            const double foot = column.y();
            const drawing::Items items = column.take();
            EXPECT_EQ(picture::clashes(items, {10, 20, 10 + wide, foot}), "");
            EXPECT_EQ(picture::count_kind(items, "line-wire"), phases);
            EXPECT_TRUE(picture::says(items, phases == 3 ? "L3, grey" : "line L, brown"));
            EXPECT_TRUE(picture::says(items, "green-and-yellow"));
        }
    }
    parts::WordColumn column(0, 714, 0);
    set_key(1, false, column);
    EXPECT_FALSE(picture::says(column.take(), "feeds the board"));
}

}  // namespace
}  // namespace toft::board
