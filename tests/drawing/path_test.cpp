#include "drawing/path.h"

#include <gtest/gtest.h>

namespace toft::drawing {
namespace {

void expect_box(const Box& found, const Box& wanted) {
    EXPECT_NEAR(found.left, wanted.left, 1e-9);
    EXPECT_NEAR(found.top, wanted.top, 1e-9);
    EXPECT_NEAR(found.right, wanted.right, 1e-9);
    EXPECT_NEAR(found.bottom, wanted.bottom, 1e-9);
}

Box box_of_one_arc(Point from, Point to, double radius, Sweep sweep) {
    return box_of_line(PathBuilder(from).arc(radius, to, sweep).inked({}));
}

TEST(PathBox, OfHalfCirclesLiesOnTheSideOfTheSweep) {
    expect_box(box_of_one_arc({0, 0}, {2, 0}, 1, {true, false}), {0, -1, 2, 0});
    expect_box(box_of_one_arc({0, 0}, {2, 0}, 1, {false, false}), {0, 0, 2, 1});
}

TEST(PathBox, OfQuarterAndThreeQuarterCircles) {
    expect_box(box_of_one_arc({1, 0}, {0, 1}, 1, {true, false}), {0, 0, 1, 1});
    expect_box(box_of_one_arc({1, 0}, {0, 1}, 1, {false, true}), {-1, -1, 1, 1});
    expect_box(box_of_one_arc({1, 0}, {0, 1}, 1, {true, true}), {0, 0, 2, 2});
}

TEST(PathBox, OfAnArcTooSmallToReachIsHalfACircle) {
    expect_box(box_of_one_arc({0, 0}, {2, 0}, 0.1, {true, false}), {0, -1, 2, 0});
}

TEST(PathBox, OfCurvesHoldsTheirControlPoints) {
    const Path path =
        PathBuilder({0, 0}).quad({5, -4}, {10, 0}).cubic({12, 3}, {14, 9}, {16, 0}).inked({});
    expect_box(box_of_line(path), {0, -4, 16, 9});
}

TEST(PathBox, OfAnArcAfterClosingBeginsAtTheStart) {
    const Path path =
        PathBuilder({0, 0}).line({4, 0}).line({4, 4}).close().arc(1, {0, -2}).inked({});
    expect_box(box_of_line(path), {-1, -2, 4, 4});
}

TEST(PathBox, OfNoStepsIsNothing) { EXPECT_TRUE(box_of_line(Path{}).empty()); }

}  // namespace
}  // namespace toft::drawing
