#include "dxf/curves.h"

#include <gtest/gtest.h>

namespace toft::dxf {
namespace {

using drawing::PathBuilder;
using drawing::Point;

TEST(DxfCurves, AnArcKeepsItsDistanceFromTheMiddle) {
    for (const bool clockwise : {true, false}) {
        const auto path = PathBuilder({10, 0}).arc(10, {0, 10}, {clockwise, !clockwise}).inked({});
        const auto strokes = strokes_of(path);
        ASSERT_EQ(strokes.size(), 1u);
        EXPECT_NEAR(strokes[0].points.back().x, 0, 1e-9);
        EXPECT_NEAR(strokes[0].points.back().y, 10, 1e-9);
        const drawing::Box around = drawing::box_of_line(path);
        for (const Point p : strokes[0].points) {
            EXPECT_NEAR(drawing::length(p), 10, 1e-9);
            EXPECT_TRUE(drawing::contains(drawing::grown(around, 1e-6), {p.x, p.y, p.x, p.y}));
        }
    }
}

TEST(DxfCurves, CurvesBeginAndEndWhereTheySay) {
    const auto path = PathBuilder({0, 0})
                          .quad({5, 10}, {10, 0})
                          .cubic({12, 4}, {18, 4}, {20, 0})
                          .line({20, 5})
                          .close()
                          .inked({});
    const auto strokes = strokes_of(path);
    ASSERT_EQ(strokes.size(), 1u);
    EXPECT_TRUE(strokes[0].closed);
    EXPECT_EQ(strokes[0].points.size(), 1u + 16 + 16 + 1);
    EXPECT_NEAR(strokes[0].points[8].y, 5, 1e-9);  // the middle of the first curve
    EXPECT_EQ(strokes[0].points.back(), (Point{20, 5}));
}

TEST(DxfCurves, AMoveBeginsAStroke) {
    const auto path = PathBuilder({0, 0}).line({1, 0}).move({5, 5}).line({6, 5}).inked({});
    EXPECT_EQ(strokes_of(path).size(), 2u);
}

}  // namespace
}  // namespace toft::dxf
