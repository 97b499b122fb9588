#include "print/trace.h"

#include "print/image.h"

#include <gtest/gtest.h>

#include <limits>

namespace toft::print {
namespace {

using namespace drawing;
using drawing::Point;

/// Corners of the box around what was traced.
template <class OneShape>
Box traced(const OneShape& shape) {
    const Image image(10, 10);
    EXPECT_TRUE(trace(image.pen(), shape));
    Box box;
    cairo_path_extents(image.pen(), &box.left, &box.top, &box.right, &box.bottom);
    return box;
}

void expect_near(const Box& a, const Box& b) {
    for (const auto side : {&Box::left, &Box::top, &Box::right, &Box::bottom}) {
        EXPECT_NEAR(a.*side, b.*side, 0.05);
    }
}

TEST(Trace, ShapesReachAsFarAsTheySay) {
    expect_near(traced(drawing::Line{{1, 2}, {3, 5}}), {1, 2, 3, 5});
    expect_near(traced(Polyline{{{0, 0}, {4, 1}, {2, 6}}}), {0, 0, 4, 6});
    expect_near(traced(Polygon{{{0, 0}, {4, 1}, {2, 6}}}), {0, 0, 4, 6});
    expect_near(traced(Rect{{1, 2, 8, 9}}), {1, 2, 8, 9});
    expect_near(traced(Rect{{1, 2, 8, 9}, {}, 2}), {1, 2, 8, 9});
    expect_near(traced(Circle{{5, 6}, 3}), {2, 3, 8, 9});
}

TEST(Trace, ArcsReachAsFarAsTheDrawingLayerSays) {
    for (const bool clockwise : {false, true}) {
        for (const bool large : {false, true}) {
            const Path path =
                PathBuilder({2, 5}).arc(4, {7, 3}, {clockwise, large}).inked(stroked(palette::ink));
            expect_near(traced(path), box_of_line(path));
        }
    }
    const Path small = PathBuilder({2, 5}).arc(0.1, {8, 5}).inked(stroked(palette::ink));
    expect_near(traced(small), box_of_line(small));
}

TEST(Trace, CurvesPassWhereTheyShould) {
    const Path quad = PathBuilder({0, 0}).quad({4, 8}, {8, 0}).inked({});
    expect_near(traced(quad), {0, 0, 8, 4});
    const Path cubic =
        PathBuilder({0, 0}).cubic({0, 4}, {8, 4}, {8, 0}).line({9, 0}).close().inked({});
    expect_near(traced(cubic), {0, 0, 9, 3});
}

TEST(Trace, FillsWhatIsInside) {
    const Image image(20, 20);
    ASSERT_TRUE(trace(image.pen(), Rect{{2, 2, 18, 18}, {}, 6}));
    cairo_fill(image.pen());
    EXPECT_EQ(image.at(10, 10), 0u);
    EXPECT_EQ(image.at(2, 2), 0xFFFFFFu) << "the corner is round";
    EXPECT_EQ(image.at(10, 2), 0u);
}

TEST(Trace, UnsoundCoordinatesAreTold) {
    const Image image(10, 10);
    const double nan = std::numeric_limits<double>::quiet_NaN();
    const Point bad{nan, 1};
    const Point far{1, 2e7};
    for (const Point p : {bad, far}) {
        EXPECT_FALSE(sound(p));
        EXPECT_FALSE(trace(image.pen(), drawing::Line{p, {}}));
        EXPECT_FALSE(trace(image.pen(), Polyline{{{}, p}}));
        EXPECT_FALSE(trace(image.pen(), Polygon{{{}, p}}));
        EXPECT_FALSE(trace(image.pen(), Circle{p, 1}));
        EXPECT_FALSE(trace(image.pen(), PathBuilder({}).line(p).inked({})));
        EXPECT_FALSE(trace(image.pen(), PathBuilder({}).quad(p, {}).inked({})));
        EXPECT_FALSE(trace(image.pen(), PathBuilder({}).cubic({}, p, {}).inked({})));
        EXPECT_FALSE(trace(image.pen(), PathBuilder({}).arc(1, p).inked({})));
    }
    EXPECT_FALSE(trace(image.pen(), Circle{{}, nan}));
    EXPECT_FALSE(trace(image.pen(), Rect{}));
    EXPECT_FALSE(trace(image.pen(), Rect{{0, 0, 1, 2e7}}));
}

TEST(Trace, NothingIsNothing) {
    const Image image(10, 10);
    EXPECT_TRUE(trace(image.pen(), Polyline{}));
    EXPECT_TRUE(trace(image.pen(), Polygon{}));
    EXPECT_TRUE(trace(image.pen(), Path{}));
    EXPECT_EQ(cairo_status(image.pen()), CAIRO_STATUS_SUCCESS);
    EXPECT_FALSE(cairo_has_current_point(image.pen()));
}

}  // namespace
}  // namespace toft::print
