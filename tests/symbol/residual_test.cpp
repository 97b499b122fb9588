#include "symbol/residual.h"

#include "drawing/measure.h"
#include "picture/looking.h"
#include "symbol/shapes.h"

#include <gtest/gtest.h>

namespace toft::symbol {
namespace {

TEST(Residual, TheBreakerHasACrossAndTheSwitchNone) {
    const Axis axis{{0, 0}, {0, 1}};
    EXPECT_EQ(picture::count_kind(residual_breaker(axis, pen_new()), "circuit-breaker"), 1);
    EXPECT_EQ(picture::count_kind(residual_switch(axis, pen_new()), "circuit-breaker"), 0);
    EXPECT_EQ(picture::count_kind(residual_switch(axis, pen_new()), "switch-disconnector"), 1);
}

TEST(Residual, LettersAreShapesAndTheBoxIsLinkedToTheBlade) {
    const Items items = residual_switch({{0, 0}, {0, 1}}, pen_new());
    EXPECT_TRUE(all_of<Text>(items).empty());
    ASSERT_EQ(all_of<Rect>(items).size(), 1u);
    EXPECT_EQ(all_of<Polygon>(items).size(), 1u) << "the delta";
    int links = 0;
    for (const Line& line : all_of<Line>(items)) links += !line.style.dash.empty();
    EXPECT_EQ(links, 1);
}

TEST(Residual, KeepsToItsReach) {
    for (const Point along : {Point{0, 1}, Point{1, 0}}) {
        const Box box = box_of(residual_breaker({{0, 0}, along}, pen_new()));
        EXPECT_LE(along.y == 1 ? box.right : -box.top, residual_reach + 1);
        EXPECT_LE(along.y == 1 ? box.bottom : box.right, residual_length + 1.5);
    }
}

}  // namespace
}  // namespace toft::symbol
