#include "drawing/hatch.h"

#include "drawing/measure.h"

#include <gtest/gtest.h>

namespace toft::drawing {
namespace {

double inked(const Items& items) {
    double sum = 0;
    for (const Item& item : items) {
        const Line& line = std::get<Line>(item.shape);
        sum += distance(line.from, line.to);
    }
    return sum;
}

TEST(Hatched, InkTimesSpacingIsTheArea) {
    const Box box{3, 7, 203, 107};
    for (const double angle : {0.0, 30.0, -45.0, 90.0}) {
        const Items lines = hatched(box, {.angle = angle, .spacing = 0.5});
        EXPECT_NEAR(inked(lines) * 0.5, 200 * 100, 200) << angle;
    }
}

TEST(Hatched, StaysInsideAndLeavesHollowsOpen) {
    // A U: the hollow between x 10 and 20 above y 10 stays white.
    const std::vector<Point> outline = {{0, 0},  {10, 0}, {10, 10}, {20, 10},
                                        {20, 0}, {30, 0}, {30, 20}, {0, 20}};
    const Items lines = hatched(outline, {.angle = 0, .spacing = 3});
    ASSERT_FALSE(lines.empty());
    for (const Item& item : lines) {
        const Line& line = std::get<Line>(item.shape);
        EXPECT_TRUE(contains(Box{0, 0, 30, 20}, joined(joined(Box{}, line.from), line.to)));
        const Point middle = between(line.from, line.to, 0.5);
        EXPECT_FALSE(middle.x > 10 && middle.x < 20 && middle.y < 10);
    }
    EXPECT_NEAR(inked(lines) * 3, 500, 60);
}

TEST(Hatched, NeighboursMeet) {
    const Hatch hatch{.angle = -45, .spacing = 5};
    const double together = inked(hatched(Box{0, 0, 40, 30}, hatch));
    const double apart =
        inked(hatched(Box{0, 0, 17, 30}, hatch)) + inked(hatched(Box{17, 0, 40, 30}, hatch));
    EXPECT_NEAR(together, apart, 1e-6);
}

TEST(Hatched, OfNothingIsNothing) {
    EXPECT_TRUE(hatched(Box{}, masonry).empty());
    EXPECT_TRUE(hatched(std::vector<Point>{}, masonry).empty());
    EXPECT_TRUE(hatched(Box{0, 0, 9, 9}, {.spacing = 0}).empty());
    EXPECT_TRUE(hatched(Box{0, 0, 1e9, 1e9}, {.spacing = 0.001}).empty());
}

TEST(GroundStrokes, HangBelowALineFromLeftToRight) {
    const Items strokes = ground_strokes({{0, 50}, {33, 50}, {200, 50}});
    ASSERT_GE(strokes.size(), 18u);
    for (const Item& item : strokes) {
        const Line& stroke = std::get<Line>(item.shape);
        EXPECT_DOUBLE_EQ(stroke.from.y, 50);
        EXPECT_GT(stroke.to.y, 50);
        EXPECT_LT(stroke.to.x, stroke.from.x);
        EXPECT_LE(stroke.from.x, 200);
    }
}

TEST(GroundStrokes, OfNoLineAreNone) {
    EXPECT_TRUE(ground_strokes({}).empty());
    EXPECT_TRUE(ground_strokes({{1, 1}}).empty());
}

}  // namespace
}  // namespace toft::drawing
