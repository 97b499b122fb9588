#include "print/paint.h"

#include "print/image.h"
#include "print/looking.h"

#include <gtest/gtest.h>

#include <limits>

namespace toft::print {
namespace {

using namespace drawing;

constexpr Colour red{0xFF0000};
constexpr Colour blue{0x0000FF};

Scene scene_of(Items items) {
    Scene scene{.width = 100, .height = 40, .paper = std::nullopt};
    scene.items = std::move(items);
    return scene;
}

Image painted(const Scene& scene) {
    Image image(100, 40);
    EXPECT_EQ(paint(image.pen(), scene, fonts()).value(), U"");
    return image;
}

TEST(Paint, FillsBelowItsStroke) {
    Style style = stroked(red, 4);
    style.fill = blue;
    const Image image = painted(scene_of({Rect{{10, 10, 30, 30}, style}}));
    EXPECT_EQ(image.at(20, 20), 0x0000FFu);
    EXPECT_EQ(image.at(11, 20), 0xFF0000u);
    EXPECT_EQ(image.at(5, 20), 0xFFFFFFu);
}

TEST(Paint, LaterItemsLieInFrontAndGroupsMoveTheirs) {
    const Rect back{{0, 0, 20, 20}, filled(red)};
    const Image image =
        painted(scene_of({back, Group{{Rect{{0, 0, 10, 10}, filled(blue)}}, {10, 5}}}));
    EXPECT_EQ(image.at(5, 5), 0xFF0000u);
    EXPECT_EQ(image.at(15, 10), 0x0000FFu);
}

TEST(Paint, DashesLeaveGaps) {
    const Image image =
        painted(scene_of({drawing::Line{{0, 20}, {100, 20}, dashed(red, 4, {10, 10})}}));
    EXPECT_EQ(image.at(5, 20), 0xFF0000u);
    EXPECT_EQ(image.at(15, 20), 0xFFFFFFu);
    EXPECT_EQ(image.at(25, 20), 0xFF0000u);
    const Image full =
        painted(scene_of({drawing::Line{{0, 20}, {100, 20}, dashed(red, 4, {0, 0})}}));
    EXPECT_EQ(full.at(15, 20), 0xFF0000u) << "a dash of nothing is a full line";
}

TEST(Paint, OpacityThinsAShapeAsAWhole) {
    Style style = stroked(red, 4);
    style.fill = red;
    style.opacity = 0.5;
    const Image image = painted(scene_of({Rect{{10, 10, 30, 30}, style}}));
    EXPECT_NEAR(static_cast<double>(image.at(20, 20) & 0xFF), 127.5, 1);
    EXPECT_EQ(image.at(11, 20), image.at(20, 20)) << "the stroke's inner half covers the fill";
}

/// Dots of the colour in the columns from `left` up to `right`.
int dots(const Image& image, int left, int right, std::uint32_t colour) {
    int count = 0;
    for (int x = left; x < right; ++x) {
        for (int y = 0; y < 40; ++y) count += image.at(x, y) == colour;
    }
    return count;
}

TEST(Paint, TextStandsByItsAnchor) {
    TextStyle style{.size = 20, .weight = Weight::bold, .colour = red};
    const auto dark_left = [&](Anchor anchor) {
        style.anchor = anchor;
        return dots(painted(scene_of({text({50, 30}, "HH", style)})), 0, 50, 0xFF0000);
    };
    EXPECT_EQ(dark_left(Anchor::start), 0);
    EXPECT_GT(dark_left(Anchor::end), 100);
    EXPECT_NEAR(dark_left(Anchor::middle), dark_left(Anchor::end) / 2, 20);
}

TEST(Paint, AHaloSurroundsItsLettersAndTurningTurnsBoth) {
    TextStyle style{.size = 16, .colour = red, .halo = blue, .halo_width = 3};
    style.anchor = Anchor::middle;
    const Image level = painted(scene_of({text({50, 25}, "IIIIII", style)}));
    EXPECT_GT(dots(level, 0, 100, 0x0000FF), 50);
    EXPECT_GT(dots(level, 0, 100, 0xFF0000), 30);
    style.turn = 90;
    const Image turned = painted(scene_of({text({50, 20}, "IIIIII", style)}));
    EXPECT_EQ(dots(turned, 0, 40, 0x0000FF), 0) << "a turned line is narrow";
    EXPECT_GT(dots(level, 0, 40, 0x0000FF), 0);
}

TEST(Paint, ATurnedTextLeavesTheNextOneItsWidth) {
    const Text level = text({5, 30}, "HHHHHH", {.size = 16, .weight = Weight::bold, .colour = red});
    Text turned = level;
    turned.style.turn = 50;
    turned.style.colour = palette::paper;
    const Image alone = painted(scene_of({level}));
    const Image after = painted(scene_of({turned, level}));
    EXPECT_GT(dots(alone, 60, 100, 0xFF0000), 20);
    EXPECT_EQ(dots(after, 60, 100, 0xFF0000), dots(alone, 60, 100, 0xFF0000));
}

TEST(Paint, NothingReachesBeyondTheScene) {
    Image image(100, 40);
    Scene scene = scene_of({Rect{{-10, -10, 500, 500}, filled(red)}});
    scene.width = 50;
    ASSERT_TRUE(paint(image.pen(), scene, fonts()));
    EXPECT_EQ(image.at(49, 20), 0xFF0000u);
    EXPECT_EQ(image.at(51, 20), 0xFFFFFFu);
}

TEST(Paint, LettersTheFontLacksAreNamedOnce) {
    const Image image(100, 40);
    const std::string plug = "\xF0\x9F\x94\x8C";
    const auto missing =
        paint(image.pen(), scene_of({text({1, 30}, plug + plug), text({1, 20}, plug)}), fonts());
    EXPECT_EQ(missing.value(), U"\U0001F50C");
    EXPECT_GT(image.inked(), 0);
}

TEST(Paint, AnUnsoundDrawingIsRefused) {
    const double nan = std::numeric_limits<double>::quiet_NaN();
    const Items unsound = {drawing::Line{{nan, 0}, {1, 1}, stroked(red)}, text({0, nan}, "x"),
                           text({0, 0}, "x", {.size = nan}), Group{{}, {nan, 0}},
                           Group{{Circle{{}, nan, filled(red)}}}};
    for (const Item& item : unsound) {
        const Image image(100, 40);
        const auto result = paint(image.pen(), scene_of({item}), fonts());
        ASSERT_FALSE(result);
        EXPECT_EQ(result.error().front().code, "unsound-drawing");
    }
}

}  // namespace
}  // namespace toft::print
