#include "symbol/board.h"

#include "symbol/shapes.h"

#include <gtest/gtest.h>

namespace toft::symbol {
namespace {

TEST(Board, TheEnclosureIsAnOutlineOfDashesAndDots) {
    const std::vector<Rect> outline = all_of<Rect>(enclosure({0, 0, 60, 90}));
    ASSERT_EQ(outline.size(), 1u);
    EXPECT_FALSE(outline[0].style.fill.has_value());
    EXPECT_EQ(outline[0].style.dash.size(), 4u);
}

TEST(Board, TheArrowEndsWhereItIsSentAndWidensBehind) {
    const std::vector<Polygon> heads = all_of<Polygon>(onward({0, 0}, {0, 30}, pen_new()));
    ASSERT_EQ(heads.size(), 1u);
    int at_tip = 0;
    for (const Point p : heads[0].points) {
        at_tip += p == Point{0, 30};
        EXPECT_LE(p.y, 30);
    }
    EXPECT_EQ(at_tip, 1);
}

TEST(Board, AJointIsAFilledDotAndABusbarBroaderThanALine) {
    const std::vector<Circle> dots = all_of<Circle>(joint({4, 5}, pen_existing()));
    ASSERT_EQ(dots.size(), 1u);
    EXPECT_TRUE(dots[0].style.fill.has_value());
    const std::vector<Line> bars = all_of<Line>(busbar({0, 0}, {40, 0}));
    ASSERT_EQ(bars.size(), 1u);
    EXPECT_GT(bars[0].style.width, pen_new().width);
}

}  // namespace
}  // namespace toft::symbol
