#include "print/white.h"

#include <gtest/gtest.h>

namespace toft::print {
namespace {

using namespace drawing;

constexpr Colour white{0xFFFFFF};

TEST(OnWhite, ThePageIsClearAndItsColourWhiteEverywhere) {
    Scene scene{.width = 10, .height = 10};
    const Text words = text({}, "rod", {.halo = palette::paper});
    Style gap = stroked(palette::paper);
    gap.fill = palette::soil;
    scene.items = {Group{{words, drawing::Line{{}, {1, 1}, gap}}},
                   Circle{{}, 1, filled(palette::paper)}};
    const Scene printed = on_white(scene);
    EXPECT_FALSE(printed.paper);
    const Group& group = std::get<Group>(printed.items[0].shape);
    EXPECT_EQ(std::get<Text>(group.items[0].shape).style.halo, white);
    EXPECT_EQ(std::get<Text>(group.items[0].shape).style.colour, palette::ink);
    EXPECT_EQ(std::get<drawing::Line>(group.items[1].shape).style.stroke, white);
    EXPECT_EQ(std::get<drawing::Line>(group.items[1].shape).style.fill, palette::soil);
    EXPECT_EQ(std::get<Circle>(printed.items[1].shape).style.fill, white);
}

}  // namespace
}  // namespace toft::print
