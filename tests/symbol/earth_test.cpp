#include "symbol/earth.h"

#include "drawing/measure.h"
#include "picture/looking.h"
#include "symbol/shapes.h"

#include <gtest/gtest.h>

namespace toft::symbol {
namespace {

std::vector<double> bar_lengths(const Items& items) {
    std::vector<double> lengths;
    for (const Line& line : all_of<Line>(items)) {
        if (line.from.y == line.to.y) lengths.push_back(line.to.x - line.from.x);
    }
    return lengths;
}

TEST(Earth, ThreeBarsGetShorter) {
    const std::vector<double> bars = bar_lengths(earth({0, 0}, pen_new()));
    ASSERT_EQ(bars.size(), 3u);
    EXPECT_GT(bars[0], bars[1]);
    EXPECT_GT(bars[1], bars[2]);
}

TEST(Earth, ProtectiveEarthStandsInARing) {
    const Items items = protective_earth({50, 50}, pen_new());
    EXPECT_EQ(bar_lengths(items).size(), 3u);
    ASSERT_EQ(all_of<Circle>(items).size(), 1u);
    const Box ring = box_of(Item(all_of<Circle>(items)[0]));
    for (const Line& line : all_of<Line>(items)) EXPECT_TRUE(contains(ring, box_of(Item(line))));
}

TEST(Earth, AnElectrodeEndsInTheSignOfEarth) {
    const Items items = electrode({0, 0}, 46, pen_new());
    EXPECT_EQ(picture::count_kind(items, "earth"), 1);
    EXPECT_NEAR(box_of(items).bottom, 46, 2);
}

TEST(Earth, ABondIsClampedToThePipe) {
    const Items items = bonded_metal({30, 10}, pen_new());
    ASSERT_EQ(all_of<Circle>(items).size(), 1u);
    const Point clamp = all_of<Circle>(items)[0].centre;
    bool on_pipe = false;
    for (const Line& side : all_of<Line>(items)) on_pipe = on_pipe || side.from.x == clamp.x;
    EXPECT_TRUE(on_pipe);
}

}  // namespace
}  // namespace toft::symbol
