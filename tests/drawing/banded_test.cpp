#include "drawing/banded.h"

#include "drawing/conductor_colours.h"
#include "drawing/measure.h"

#include <gtest/gtest.h>

namespace toft::drawing {
namespace {

const std::vector<Point> two_points = {{0, 0}, {50, 0}};

TEST(Cased, HasAnEdgeOfInkOnBothSides) {
    const Items items = cased(two_points, conductor::grey, 4);
    ASSERT_EQ(items.size(), 2u);
    EXPECT_EQ(std::get<Polyline>(items[0].shape).style.stroke, palette::ink);
    EXPECT_EQ(std::get<Polyline>(items[1].shape).style.stroke, conductor::grey);
    EXPECT_GT(box_of(items[0]).height(), box_of(items[1]).height());
}

TEST(Banded, BandsAreAsLongAsTheGaps) {
    const Items items = banded(two_points, conductor::green, conductor::yellow, 4);
    ASSERT_EQ(items.size(), 3u);
    const Style& bands = std::get<Polyline>(items[2].shape).style;
    EXPECT_EQ(bands.stroke, conductor::yellow);
    ASSERT_EQ(bands.dash.size(), 2u);
    EXPECT_EQ(bands.dash[0], bands.dash[1]);
    EXPECT_EQ(bands.width, std::get<Polyline>(items[1].shape).style.width);
}

}  // namespace
}  // namespace toft::drawing
