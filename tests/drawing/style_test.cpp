#include "drawing/style.h"

#include <gtest/gtest.h>

namespace toft::drawing {
namespace {

TEST(Style, DrawsNothingUntilTold) {
    EXPECT_FALSE(Style{}.stroke.has_value());
    EXPECT_FALSE(Style{}.fill.has_value());
    EXPECT_FALSE(filled(Colour{0x123456}).stroke.has_value());
    EXPECT_FALSE(stroked(Colour{0x123456}).fill.has_value());
    EXPECT_EQ(dashed(Colour{1}, 2, {3, 4}).dash, (std::vector<double>{3, 4}));
}

TEST(Contrast, OfBlackAndWhiteIs21) {
    EXPECT_DOUBLE_EQ(contrast(Colour{0x000000}, Colour{0xFFFFFF}), 21);
    EXPECT_DOUBLE_EQ(contrast(Colour{0x335577}, Colour{0x335577}), 1);
}

// The definition of relative luminance in WCAG 2: weights of the three pure colours.
TEST(Luminance, OfPureColoursIsTheirWeight) {
    EXPECT_NEAR(luminance(Colour{0xFF0000}), 0.2126, 1e-12);
    EXPECT_NEAR(luminance(Colour{0x00FF00}), 0.7152, 1e-12);
    EXPECT_NEAR(luminance(Colour{0x0000FF}), 0.0722, 1e-12);
}

}  // namespace
}  // namespace toft::drawing
