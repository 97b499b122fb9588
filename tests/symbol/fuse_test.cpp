#include "symbol/fuse.h"

#include "picture/looking.h"
#include "symbol/shapes.h"

#include <gtest/gtest.h>

namespace toft::symbol {
namespace {

TEST(Fuse, TheLineRunsThroughTheBox) {
    const Items items = fuse({{10, 20}, {0, 1}}, pen_new());
    ASSERT_EQ(all_of<Polygon>(items).size(), 1u);
    const std::vector<Line> lines = all_of<Line>(items);
    ASSERT_EQ(lines.size(), 1u);
    EXPECT_EQ(lines[0].from, (Point{10, 20}));
    EXPECT_EQ(lines[0].to, (Point{10, 20 + fuse_length}));
}

TEST(Fuse, ASwitchFuseIsASwitchAndAFuseInSeries) {
    const Items items = switch_fuse({{0, 0}, {0, 1}}, pen_new());
    EXPECT_EQ(picture::count_kind(items, "switch-disconnector"), 1);
    EXPECT_EQ(picture::count_kind(items, "fuse"), 1);
    double foot = 0;
    for (const Line& line : all_of<Line>(items)) foot = std::max({foot, line.from.y, line.to.y});
    EXPECT_DOUBLE_EQ(foot, switch_fuse_length);
}

}  // namespace
}  // namespace toft::symbol
