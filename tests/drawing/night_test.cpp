#include "drawing/night.h"

#include "drawing/conductor_colours.h"

#include <gtest/gtest.h>

namespace toft::drawing {
namespace {

TEST(AtNight, ChangesThePaletteEverywhereAndConductorsNowhere) {
    Scene scene{.width = 10, .height = 10};
    const Text words = text({}, "rod", {.halo = palette::paper});
    scene.items = {Group{{words, Line{{}, {1, 1}, stroked(palette::accent)}}},
                   Line{{}, {1, 1}, stroked(conductor::blue)}};
    const Scene night = at_night(scene);
    EXPECT_LT(luminance(*night.paper), 0.05);
    const Group& group = std::get<Group>(night.items[0].shape);
    const TextStyle& style = std::get<Text>(group.items[0].shape).style;
    EXPECT_GT(luminance(style.colour), 0.5);
    EXPECT_EQ(style.halo, night.paper);
    EXPECT_NE(std::get<Line>(group.items[1].shape).style.stroke, palette::accent);
    EXPECT_EQ(std::get<Line>(night.items[1].shape).style.stroke, conductor::blue);
}

TEST(AtNight, NoColourOfTheNightIsOneOfTheDay) {
    for (const auto& [day, night] : palette::day_and_night) {
        for (const auto& pair : palette::day_and_night) EXPECT_NE(night, pair.first);
    }
}

}  // namespace
}  // namespace toft::drawing
