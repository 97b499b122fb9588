#include "drawing/geometry.h"

#include <gtest/gtest.h>

namespace toft::drawing {
namespace {

TEST(Point, VectorsAddScaleAndMeasure) {
    EXPECT_EQ((Point{1, 2} + Point{3, 4} - Point{1, 1}), (Point{3, 5}));
    EXPECT_EQ((Point{1, -2} * 3), (Point{3, -6}));
    EXPECT_DOUBLE_EQ(distance({1, 1}, {4, 5}), 5);
    EXPECT_EQ(unit({0, 7}), (Point{0, 1}));
    EXPECT_EQ(unit({}), Point{});
    EXPECT_EQ(between({0, 0}, {8, 4}, 0.25), (Point{2, 1}));
}

TEST(Point, TurnsClockwiseOnThePage) {
    const Point right{1, 0};
    const Point down{0, 1};
    EXPECT_EQ(quarter_turned(right), down);
    EXPECT_NEAR(distance(turned(right, 90), down), 0, 1e-15);
    EXPECT_GT(cross(right, down), 0);
    EXPECT_EQ(dot(right, down), 0);
}

TEST(Box, OfNothingIsEnlargedByAnyPoint) {
    const Box nothing;
    EXPECT_TRUE(nothing.empty());
    EXPECT_EQ(nothing.width(), 0);
    EXPECT_EQ(joined(nothing, Point{3, 4}), (Box{3, 4, 3, 4}));
    EXPECT_FALSE(joined(nothing, Point{3, 4}).empty());
    EXPECT_EQ(joined(nothing, Box{1, 2, 3, 4}), (Box{1, 2, 3, 4}));
    EXPECT_TRUE(grown(nothing, 5).empty());
}

TEST(Box, OverlapIsOfAreaNotOfEdges) {
    const Box box{0, 0, 10, 10};
    EXPECT_TRUE(overlap(box, {9, 9, 20, 20}));
    EXPECT_TRUE(overlap(box, {2, 2, 3, 3}));
    EXPECT_FALSE(overlap(box, {10, 0, 20, 10}));
    EXPECT_FALSE(overlap(box, {0, 11, 10, 12}));
    EXPECT_FALSE(overlap(box, {0.1 + 0.2 + 9.7, 0, 20, 10}));
}

TEST(Box, ContainsAndNearest) {
    const Box box{0, 0, 10, 10};
    EXPECT_TRUE(contains(box, {0, 0, 10, 10}));
    EXPECT_FALSE(contains(box, {0, 0, 10, 10.1}));
    EXPECT_EQ(nearest(box, {-5, 20}), (Point{0, 10}));
    EXPECT_EQ(nearest(box, {4, 5}), (Point{4, 5}));
    EXPECT_EQ(moved(box, {1, 2}), (Box{1, 2, 11, 12}));
}

}  // namespace
}  // namespace toft::drawing
