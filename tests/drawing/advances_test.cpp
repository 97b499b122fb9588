#include "drawing/advances.h"

#include <gtest/gtest.h>

#include <string>

namespace toft::drawing {
namespace {

double units(char32_t character, Weight weight = Weight::normal) {
    return advance(character, weight) * 2048;
}

// Table hmtx of DejaVu Sans 2.37: places at both ends of each range and among the single signs.
TEST(Advance, IsThatOfTheFont) {
    EXPECT_EQ(units(U' '), 651);
    EXPECT_EQ(units(U'a'), 1255);
    EXPECT_EQ(units(U'W'), 2025);
    EXPECT_EQ(units(U'~'), 1716);
    EXPECT_EQ(units(U'Ω'), 1565);
    EXPECT_EQ(units(U'—'), 2048);
    EXPECT_EQ(units(U'a', Weight::bold), 1382);
    EXPECT_EQ(units(U'Ω', Weight::bold), 1741);
    EXPECT_EQ(units(U' ', Weight::bold), 713);
    EXPECT_EQ(units(0x00A0), 651);
    EXPECT_EQ(units(0x00A0, Weight::bold), 713);
    EXPECT_EQ(units(0x017F), 721);
    EXPECT_EQ(units(0x017F, Weight::bold), 891);
    EXPECT_EQ(units(0x0386), 1418);
    EXPECT_EQ(units(0x0386, Weight::bold), 1633);
    EXPECT_EQ(units(0x03CE), 1715);
    EXPECT_EQ(units(0x03CE, Weight::bold), 1780);
    EXPECT_EQ(units(0x2010), 739);
    EXPECT_EQ(units(0x2010, Weight::bold), 850);
    EXPECT_EQ(units(0xFFFD), 2100);
    EXPECT_EQ(units(0xFFFD, Weight::bold), 2280);
    EXPECT_EQ(units(0x221A), 1305);
    EXPECT_EQ(units(0x221A, Weight::bold), 1366);
    EXPECT_EQ(units(0x2264), 1716);
    EXPECT_EQ(units(0x2264, Weight::bold), 1716);
    EXPECT_EQ(units(0x2082), 821);
    EXPECT_EQ(units(0x2082, Weight::bold), 897);
    EXPECT_EQ(units(0x03C6), 1351);
    EXPECT_EQ(units(0x03C6, Weight::bold), 1602);
    EXPECT_EQ(units(0x00B2), 821);
    EXPECT_EQ(units(0x00B2, Weight::bold), 897);
    EXPECT_EQ(units(0x00A3), 1303);
    EXPECT_EQ(units(0x00A3, Weight::bold), 1425);
}

TEST(Advance, OfFiguresIsOneSoThatTablesStandStill) {
    for (const Weight weight : {Weight::normal, Weight::bold}) {
        for (char32_t figure = U'0'; figure <= U'9'; ++figure) {
            EXPECT_EQ(units(figure, weight), units(U'0', weight));
        }
    }
}

TEST(Advance, KnowsTheSignsOfTheTrade) {
    const std::u32string signs = U"Ω²³Δ√·×≤≥±°′–µφρ∥Ø£₀₁₂₃₄₅₆₇₈₉½→−≈∞";
    for (const char32_t sign : signs) {
        EXPECT_NE(advance(sign, Weight::normal), 1) << static_cast<std::uint32_t>(sign);
        EXPECT_GE(units(sign, Weight::bold), units(sign)) << static_cast<std::uint32_t>(sign);
    }
}

TEST(Advance, OfStrangersIsWideAndOfCombiningMarksNothing) {
    EXPECT_EQ(advance(U'\u4E2D', Weight::normal), 1);
    EXPECT_EQ(advance(U'\u037F', Weight::normal), 1);
    EXPECT_EQ(advance(U'\u0301', Weight::normal), 0);
    EXPECT_EQ(advance(0x7F, Weight::normal), 1);
    EXPECT_EQ(advance(0x10FFFF, Weight::bold), 1);
}

}  // namespace
}  // namespace toft::drawing
