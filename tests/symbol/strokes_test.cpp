#include "symbol/strokes.h"

#include "drawing/measure.h"
#include "picture/looking.h"
#include "symbol/shapes.h"

#include <gtest/gtest.h>

namespace toft::symbol {
namespace {

Items drawn(const std::vector<Core>& cores) { return strokes({{0, 0}, {0, 1}}, cores, pen_new()); }

TEST(Strokes, OneForEachConductorWithTheirNumber) {
    for (const int lines : {1, 3}) {
        std::vector<Core> cores(static_cast<std::size_t>(lines), Core::line);
        cores.push_back(Core::neutral);
        cores.push_back(Core::protective);
        const Items items = drawn(cores);
        EXPECT_EQ(picture::count_kind(items, "stroke"), lines + 2);
        EXPECT_EQ(picture::count_kind(items, "stroke-line"), lines);
        EXPECT_TRUE(picture::says(items, std::to_string(lines + 2)));
    }
}

TEST(Strokes, TheNeutralHasADotTheProtectiveABarAndThePenBoth) {
    const auto dots = [](Core core) { return all_of<Circle>(drawn({core})).size(); };
    const auto lines = [](Core core) { return all_of<Line>(drawn({core})).size(); };
    EXPECT_EQ(dots(Core::line), 0u);
    EXPECT_EQ(dots(Core::neutral), 1u);
    EXPECT_EQ(dots(Core::protective), 0u);
    EXPECT_EQ(dots(Core::pen), 1u);
    EXPECT_EQ(lines(Core::line), 1u);
    EXPECT_EQ(lines(Core::neutral), 1u);
    EXPECT_EQ(lines(Core::protective), 2u);
    EXPECT_EQ(lines(Core::pen), 2u);
}

TEST(Strokes, FiveTakeNoMoreThanTheirLength) {
    const std::vector<Core> cores{Core::line, Core::line, Core::line, Core::neutral,
                                  Core::protective};
    const Box box = box_of(drawn(cores));
    EXPECT_LE(box.height(), strokes_length(cores.size()) + 8);
    EXPECT_LE(-box.left, strokes_reach);
    EXPECT_LE(box.right, strokes_reach);
}

}  // namespace
}  // namespace toft::symbol
