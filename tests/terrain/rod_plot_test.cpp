#include "terrain/rod_plot.h"

#include "terrain/looking.h"

#include <gtest/gtest.h>

namespace toft::terrain {
namespace {

TEST(RodPlot, LeavesOutPointsThatCannotBeDrawn) {
    answer::GroundSideAnswer side;
    side.over_length = {{2, 30, 60},        {0, 1, 2},       {1, 50, 90}, {no_number, 3, 4},
                        {3, no_number, 40}, {4, 20, no_end}, {5, 20, 10}};
    const auto points = drawable_points(side);
    ASSERT_EQ(points.size(), 3u);
    EXPECT_EQ(points[0].length_m, 1);
    EXPECT_EQ(points[1].length_m, 2);
    EXPECT_EQ(points[2].high_ohm, no_end) << "an endless worst is drawn at the paper's edge";
}

TEST(RodPlot, OneSignForRodsThatMeetTwoTargets) {
    answer::GroundSideAnswer side = looked_at_ground().sides[0];
    side.targets[2].choices = side.targets[0].choices;
    const auto marked = marked_choices(side);
    ASSERT_EQ(marked.size(), 2u);
    EXPECT_EQ(marked[1].sign, "2");
    EXPECT_EQ(marked[1].target, 1u);
}

TEST(RodPlot, EachTargetStandsAtItsFigureOnTheScale) {
    const answer::GroundAnswer ground = looked_at_ground();
    const Drawn drawn = rod_plot({ground.soil, ground.sides[0], 2.4}, {10, 784, 100});
    std::vector<double> at;
    for (const char* figure : {"2 Ω", "20 Ω", "200 Ω"}) {
        for (const drawing::Text& text : picture::texts_in(drawn.items)) {
            const bool target = text.style.weight == drawing::Weight::bold;
            if (target && picture::line_of(text) == figure) at.push_back(text.at.x);
        }
    }
    ASSERT_EQ(at.size(), 3u);
    EXPECT_NEAR(at[1] - at[0], at[2] - at[1], 0.01) << "a decade is as long as the next";
    EXPECT_EQ(picture::count_kind(drawn.items, "choice"), 3);
    EXPECT_EQ(picture::count_kind(drawn.items, "electrode"), 1);
}

TEST(RodPlot, AReadingStandsWhereTheRodEnds) {
    answer::GroundAnswer ground = looked_at_ground();
    const Space space{10, 784, 100};
    EXPECT_EQ(
        picture::count_kind(rod_plot({ground.soil, ground.sides[0], 2.4}, space).items, "read"), 0);
    ground.sides[0].read_ohm = 41;
    const Drawn drawn = rod_plot({ground.soil, ground.sides[0], 2.4}, space);
    const drawing::Group* read = picture::find_kind(drawn.items, "read");
    const drawing::Group* year = picture::find_kind(drawn.items, "electrode");
    ASSERT_TRUE(read && year);
    EXPECT_NEAR(drawing::box_of(read->items).centre().y, drawing::box_of(year->items).centre().y,
                0.01);
    EXPECT_EQ(
        picture::count_kind(rod_plot({ground.soil, ground.sides[0], {}}, space).items, "read"), 0);
}

TEST(RodPlot, NothingIsDrawnOfNothing) {
    const answer::GroundSideAnswer empty;
    EXPECT_TRUE(rod_plot({{}, empty, {}}, {10, 784, 100}).items.empty());
}

}  // namespace
}  // namespace toft::terrain
