#include "drawing/palette.h"

#include "drawing/conductor_colours.h"

#include <gtest/gtest.h>

#include <cmath>

namespace toft::drawing {
namespace {

constexpr double least_for_text = 4.5;    // WCAG 2, 1.4.3
constexpr double least_for_shapes = 3.0;  // WCAG 2, 1.4.11

Colour at_night(Colour day) {
    for (const auto& [one, night] : palette::day_and_night) {
        if (one == day) return night;
    }
    ADD_FAILURE() << "no colour of the night";
    return day;
}

TEST(Palette, TextCanBeReadOnEveryGroundByDayAndNight) {
    for (const Colour text : {palette::ink, palette::graphite, palette::accent}) {
        for (const Colour under : {palette::paper, palette::wash, palette::blush, palette::soil}) {
            EXPECT_GE(contrast(text, under), least_for_text);
            EXPECT_GE(contrast(at_night(text), at_night(under)), least_for_text);
        }
    }
}

TEST(Palette, LinesStandOutFromPaper) {
    for (const Colour line : {palette::pencil, palette::earth}) {
        EXPECT_GE(contrast(line, palette::paper), least_for_shapes);
        EXPECT_GE(contrast(at_night(line), at_night(palette::paper)), least_for_shapes);
    }
}

double apart(Colour a, Colour b) {
    double sum = 0;
    for (const unsigned shift : {16u, 8u, 0u}) {
        const auto channel = [&](Colour c) {
            return static_cast<double>((static_cast<std::uint32_t>(c) >> shift) & 0xffu);
        };
        sum += (channel(a) - channel(b)) * (channel(a) - channel(b));
    }
    return std::sqrt(sum);
}

TEST(Conductor, ColoursStandApartFromOneAnotherAndFromTheAccent) {
    const std::vector<Colour> colours = {conductor::brown, conductor::blue,  conductor::grey,
                                         conductor::black, conductor::green, conductor::yellow};
    for (std::size_t i = 0; i < colours.size(); ++i) {
        EXPECT_GT(apart(colours[i], palette::accent), 60);
        for (std::size_t j = 0; j < i; ++j) EXPECT_GT(apart(colours[i], colours[j]), 90);
    }
}

TEST(Conductor, BandsOfEarthAreToldApartInBlackAndWhite) {
    EXPECT_GE(contrast(conductor::green, conductor::yellow), 2.5);
}

}  // namespace
}  // namespace toft::drawing
