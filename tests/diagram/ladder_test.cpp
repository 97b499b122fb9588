#include "diagram/ladder.h"

#include "diagram/sheet.h"

#include <gtest/gtest.h>

namespace toft::diagram {
namespace {

TEST(Ladder, ARowIsAsHighAsItsWordsOrItsSymbolAsks) {
    Ladder ladder(columns_for(794), 0);
    const Row low = ladder.row({"a", {}, {}}, 90);
    EXPECT_DOUBLE_EQ(low.foot - low.top, 90);
    const Row high = ladder.row({"a", std::vector<std::string>(20, "line"), {}}, 30);
    EXPECT_DOUBLE_EQ(high.top, low.foot);
    EXPECT_GT(high.foot - high.top, 20 * 11);
    EXPECT_DOUBLE_EQ(ladder.y(), high.foot);
}

TEST(Ladder, TheLiveLineIsWholeAroundASymbol) {
    Ladder ladder(columns_for(794), 0);
    double from = 0;
    const Row row = ladder.device({"a", {}, {}}, 40, [&](const Axis& axis, const Style&) {
        from = axis.at.y;
        return Items{};
    });
    const std::vector<Line> lines = all_of<Line>(ladder.take());
    ASSERT_EQ(lines.size(), 2u);
    EXPECT_DOUBLE_EQ(lines[0].from.y, row.top);
    EXPECT_DOUBLE_EQ(lines[0].to.y, from);
    EXPECT_DOUBLE_EQ(lines[1].from.y, from + 40);
    EXPECT_DOUBLE_EQ(lines[1].to.y, row.foot);
}

TEST(Ladder, TheProtectiveConductorGoesOnFromWhereItWasLeft) {
    Ladder ladder(columns_for(794), 0);
    ladder.earth_from(10);
    ladder.earth_to(50);
    ladder.earth_to(90);
    ladder.earth_to(80);
    const Items items = ladder.take();
    EXPECT_EQ(count_kind(items, "protective"), 2);
}

TEST(Ladder, WhatIsDrawnBehindComesFirst) {
    Ladder ladder(columns_for(794), 0);
    ladder.live(0, 10);
    ladder.draw_behind({Rect{{0, 0, 5, 5}, {}}});
    const Items items = ladder.take();
    ASSERT_EQ(items.size(), 2u);
    EXPECT_TRUE(std::holds_alternative<Rect>(items[0].shape));
}

}  // namespace
}  // namespace toft::diagram
