#include "parts/texture.h"

#include "drawing/measure.h"
#include "picture/looking.h"

#include <gtest/gtest.h>

#include <set>

namespace toft::parts {
namespace {

using namespace picture;

const drawing::Box wall{100, 100, 300, 220};

TEST(Texture, EveryConstructionLooksDifferent) {
    std::set<std::string> seen;
    const auto count = site::words<site::Construction>().size();
    for (std::size_t i = 0; i < count; ++i) {
        drawing::Scene scene{400, 300};
        scene.items = wall_texture(static_cast<site::Construction>(i), wall);
        EXPECT_FALSE(scene.items.empty());
        EXPECT_TRUE(seen.insert(drawing::to_svg(scene)).second) << i;
        EXPECT_TRUE(drawing::contains(drawing::grown(wall, 1), drawing::box_of(scene.items))) << i;
    }
}

TEST(Texture, AGableRisesAndALevelRoofDoesNot) {
    EXPECT_NEAR(drawing::distance(roof_line(wall, 50)[1], {200, 50}), 0, 1e-9);
    for (const drawing::Point p : roof_line(wall, 0)) EXPECT_EQ(p.y, wall.top);
}

TEST(Texture, TheShellStandsOnItsWalls) {
    const drawing::Box box = drawing::box_of(building_shell(wall, 10, 50));
    EXPECT_LT(box.top, 51);
    EXPECT_NEAR(box.bottom, wall.bottom, 1.5);
}

TEST(Texture, TheNameKeepsUnderItsRoof) {
    for (const double rise : {0.0, 50.0}) {
        const drawing::Box box = letters_of(building_name(hostile_name(), wall, rise));
        EXPECT_LE(box.width(), wall.width());
        EXPECT_LT(box.bottom, wall.top);
    }
    EXPECT_EQ(line_of(building_name("studio", wall, 50)), "Studio");
}

}  // namespace
}  // namespace toft::parts
