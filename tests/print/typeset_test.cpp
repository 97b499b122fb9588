#include "print/typeset.h"

#include "drawing/measure.h"
#include "print/looking.h"

#include <gtest/gtest.h>

namespace toft::print {
namespace {

using drawing::Script;
using drawing::Text;

TEST(Typeset, IsAsWideAsMeasured) {
    const Text text{
        {}, {{"loop impedance Z"}, {"s", Script::below}, {" 0.33 Ω, I²t"}}, {.size = 11}};
    const Typeset set = typeset(text, fonts().normal);
    EXPECT_NEAR(set.width, drawing::text_width(text.spans, text.style), 1e-9);
    EXPECT_EQ(set.missing, U"");
}

TEST(Typeset, SubscriptsAreSmallAndLow) {
    const Text text{{}, {{"I"}, {"b", Script::below}, {"2", Script::above}}, {.size = 10}};
    const Typeset set = typeset(text, fonts().normal);
    ASSERT_EQ(set.rows.size(), 3u);
    EXPECT_EQ(set.rows[0].drop, 0);
    EXPECT_DOUBLE_EQ(set.rows[1].size, 7);
    EXPECT_DOUBLE_EQ(set.rows[1].drop, 2.2);
    EXPECT_DOUBLE_EQ(set.rows[2].drop, -3.6);
    EXPECT_DOUBLE_EQ(set.rows[1].glyphs[0].x,
                     10 * fonts().normal.advance_of(fonts().normal.glyph_of(U'I')));
}

TEST(Typeset, WhatTheFontLacksIsToldAndNeverAnEmptyBox) {
    const Typeset set = typeset(drawing::text({}, "a\xF0\x9F\x94\x8C"), fonts().bold);
    EXPECT_EQ(set.missing, U"\U0001F50C");
    ASSERT_EQ(set.rows[0].glyphs.size(), 2u);
    EXPECT_EQ(set.rows[0].glyphs[1].number, fonts().bold.glyph_of(replacement));
    EXPECT_EQ(set.rows[0].glyphs[1].utf8, "\xEF\xBF\xBD");
}

TEST(Typeset, NoTextTakesNoRoom) {
    const Typeset set = typeset(Text{}, fonts().normal);
    EXPECT_EQ(set.width, 0);
    EXPECT_TRUE(set.rows.empty());
}

}  // namespace
}  // namespace toft::print
