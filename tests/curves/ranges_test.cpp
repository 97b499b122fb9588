#include "curves/ranges.h"

#include "curves/looking.h"

#include <gtest/gtest.h>

namespace toft::curves {
namespace {

TEST(Ranges, ThreePhasesAddLineToLine) {
    answer::FigureAnswers figures;
    figures.far_line_earth_a = {300, 500};
    EXPECT_EQ(ranges_of(figures).size(), 4u);
    EXPECT_EQ(ranges_of(figures).front().amperes.largest, 500);
    figures.near_line_line_a = answer::FaultRange{800, 900};
    figures.far_line_line_a = answer::FaultRange{700, 750};
    EXPECT_EQ(ranges_of(figures).size(), 6u);
}

TEST(Ranges, AreWordedWithOneUnitWhereBothHaveIt) {
    EXPECT_EQ(range_words({312, 640}), "312 to 640 A");
    EXPECT_EQ(range_words({1040, 1200}), "1.04 to 1.2 kA");
    EXPECT_EQ(range_words({645, 1100}), "645 A to 1.1 kA");
    EXPECT_EQ(range_words({645, 645}), "645 A");
}

TEST(Ranges, BarsReachFromTheSmallestToTheLargest) {
    const LogPaper paper = plain_paper();
    const drawing::Items items =
        range_rows(paper, {{"earth fault, far end", {312, 640}, true}}, 820, 1240);
    const drawing::Group* group = picture::find_kind(items, "range");
    ASSERT_NE(group, nullptr);
    const auto& bar = std::get<drawing::Rect>(group->items.front().shape);
    EXPECT_EQ(bar.box.left, paper.x(312));
    EXPECT_EQ(bar.box.right, paper.x(640));
    EXPECT_TRUE(picture::says(items, "earth fault, far end"));
    EXPECT_TRUE(picture::says(items, "312 to 640 A"));
}

}  // namespace
}  // namespace toft::curves
