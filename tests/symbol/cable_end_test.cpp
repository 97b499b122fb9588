#include "symbol/cable_end.h"

#include "symbol/shapes.h"

#include <gtest/gtest.h>

namespace toft::symbol {
namespace {

TEST(CableEnd, TheGlandPointsAlongTheCable) {
    const std::vector<Polygon> shapes = all_of<Polygon>(gland({{0, 0}, {0, 1}}, pen_new()));
    ASSERT_EQ(shapes.size(), 1u);
    int at_tip = 0;
    for (const Point p : shapes[0].points) at_tip += p.y == gland_length;
    EXPECT_EQ(at_tip, 1);
}

TEST(CableEnd, AJointBoxHasACableOnBothSides) {
    const Items items = joint_box({{0, 0}, {0, 1}}, pen_new());
    double top = 99;
    double foot = 0;
    for (const Polygon& one : all_of<Polygon>(items)) {
        for (const Point p : one.points) {
            top = std::min(top, p.y);
            foot = std::max(foot, p.y);
        }
    }
    EXPECT_EQ(all_of<Polygon>(items).size(), 2u);
    EXPECT_DOUBLE_EQ(top, 0);
    EXPECT_DOUBLE_EQ(foot, joint_box_length);
}

TEST(CableEnd, ArmourIsDashedOnBothSides) {
    const std::vector<Line> sides = all_of<Line>(armour({{0, 0}, {0, 1}}, 80));
    ASSERT_EQ(sides.size(), 2u);
    EXPECT_DOUBLE_EQ(sides[0].from.x, -sides[1].from.x);
    for (const Line& side : sides) {
        EXPECT_FALSE(side.style.dash.empty());
        EXPECT_DOUBLE_EQ(length(side.to - side.from), 80);
    }
}

}  // namespace
}  // namespace toft::symbol
