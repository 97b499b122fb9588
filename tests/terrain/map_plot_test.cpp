#include "terrain/map_plot.h"

#include "terrain/half_ball_map.h"
#include "terrain/looking.h"

#include <gtest/gtest.h>

namespace toft::terrain {
namespace {

struct Looked {
    site::Job job = looked_at_job();
    answer::GroundSideAnswer side = looked_at_ground().sides[0];
    SurfaceMap map = half_ball_map(job, side);
    MapOf of{job, side.lost_neutral, map};
};

TEST(MapPlot, LabelsEachLevelOnItsLine) {
    const Looked looked;
    const Drawn drawn = map_plot(looked.of, {10, 784, 100});
    for (const ContourLine& contour : looked.map.contours) {
        const std::string words = level_words(looked.of, contour.level);
        EXPECT_TRUE(picture::says(drawn.items, words)) << words;
    }
    EXPECT_EQ(picture::count_kind(drawn.items, "contour"),
              static_cast<int>(looked.map.contours.size()));
    EXPECT_EQ(picture::count_kind(drawn.items, "building"), 2);
    EXPECT_EQ(picture::count_kind(drawn.items, "electrode"), 2);
}

TEST(MapPlot, BothWaysHaveOneScale) {
    const Looked looked;
    const Drawn drawn = map_plot(looked.of, {10, 784, 100});
    const drawing::Group* house = picture::find_kind(drawn.items, "building");
    ASSERT_TRUE(house);
    const drawing::Box box = drawing::box_of(house->items);
    EXPECT_NEAR(box.width(), box.height(), 0.01);
}

TEST(MapPlot, VoltsAreDashedAndSharesAreNot) {
    EXPECT_FALSE(contour_style(0.2, true).dash.empty());
    EXPECT_TRUE(contour_style(0.2, false).dash.empty());
    EXPECT_GT(contour_style(0.5, false).width, contour_style(0.01, false).width);
}

TEST(MapPlot, ShowsNorthOnlyWhereTheCompassIsKnown) {
    Looked looked;
    EXPECT_FALSE(picture::says(map_plot(looked.of, {10, 784, 100}).items, "north"));
    looked.map.compass_known = true;
    EXPECT_TRUE(picture::says(map_plot(looked.of, {10, 784, 100}).items, "north"));
}

}  // namespace
}  // namespace toft::terrain
