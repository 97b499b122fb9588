#include "print/font.h"

#include "drawing/advances.h"
#include "print/looking.h"

#include <gtest/gtest.h>

namespace toft::print {
namespace {

TEST(Font, LettersAreAsWideAsDrawingsMeasureThem) {
    for (const drawing::Weight weight : {drawing::Weight::normal, drawing::Weight::bold}) {
        const Face& face = fonts().of(weight);
        for (const char32_t letter : U"Aj0~éßΩΔφ²√≤·×°µ–…●▲■○") {
            if (letter == 0) continue;
            const unsigned long glyph = face.glyph_of(letter);
            ASSERT_NE(glyph, 0u) << static_cast<unsigned>(letter);
            EXPECT_NEAR(face.advance_of(glyph), drawing::advance(letter, weight), 1e-9)
                << static_cast<unsigned>(letter);
        }
    }
}

TEST(Font, WhatTheFontLacksHasNoNumber) {
    EXPECT_EQ(fonts().normal.glyph_of(0x1F50C), 0u);
    EXPECT_NE(fonts().normal.glyph_of(replacement), 0u);
}

TEST(Font, AnotherFontIsRefusedByName) {
    const auto bold = Face::open(font_file("DejaVuSans-Bold.ttf"), drawing::Weight::normal);
    ASSERT_FALSE(bold);
    EXPECT_EQ(bold.error().front().code, "font");
    EXPECT_NE(bold.error().front().says.find("DejaVu Sans 2.37 is wanted"), std::string::npos);
    EXPECT_FALSE(open_fonts(font_file("DejaVuSans.ttf"), font_file("DejaVuSans.ttf")));
}

TEST(Font, BrokenFilesAreRefused) {
    const std::string whole = font_file("DejaVuSans.ttf");
    ASSERT_GT(whole.size(), 100000u);
    for (const std::string& bytes : {std::string(), std::string("no font"), whole.substr(0, 400)}) {
        const auto face = Face::open(bytes, drawing::Weight::normal);
        ASSERT_FALSE(face);
        EXPECT_EQ(face.error().front().code, "font");
    }
}

}  // namespace
}  // namespace toft::print
