#include "drawing/utf8.h"

#include <gtest/gtest.h>
#include <rapidcheck.h>
#include <rapidcheck/gtest.h>

namespace toft::drawing {
namespace {

TEST(Drawable, KeepsWhatIsRight) {
    EXPECT_EQ(drawable("Zs ≤ 1.37 Ω"), U"Zs ≤ 1.37 Ω");
    EXPECT_EQ(drawable("\xF0\x9F\x94\x8C"), U"\U0001F50C");
    EXPECT_EQ(to_utf8(U"Ω²√\U0001F50C"), "Ω²√\xF0\x9F\x94\x8C");
}

TEST(Drawable, ReplacesBrokenBytesPieceByPiece) {
    EXPECT_EQ(drawable("a\xFF"
                       "b"),
              U"a\uFFFDb");
    EXPECT_EQ(drawable("\xC3"), U"\uFFFD");
    EXPECT_EQ(drawable("\xE2\x84z"), U"\uFFFDz");
    EXPECT_EQ(drawable("\xC0\xAF"), U"\uFFFD\uFFFD");                      // overlong
    EXPECT_EQ(drawable("\xED\xA0\x80"), U"\uFFFD\uFFFD\uFFFD");            // surrogate
    EXPECT_EQ(drawable("\xF4\x90\x80\x80"), U"\uFFFD\uFFFD\uFFFD\uFFFD");  // past U+10FFFF
    EXPECT_EQ(drawable("\xEF\xBF\xBF"), U"\uFFFD");                        // noncharacter U+FFFF
}

TEST(Drawable, LeavesOutControlsAndTurnsOfDirection) {
    EXPECT_EQ(drawable(std::string_view("a\0\x01\x1B[31m\x7F", 9)), U"a[31m");
    EXPECT_EQ(drawable("32\u202E\u2066 A\u200F"), U"32 A");
    EXPECT_EQ(drawable("\xC2\x85x"), U"x");
}

TEST(Drawable, MakesOneLine) {
    EXPECT_EQ(drawable("a\tb\r\nc\u2028d"), U"a b  c d");
    EXPECT_EQ(drawable_lines("a\r\nb"), U"a \nb");
}

RC_GTEST_PROP(Drawable, AnyBytesBecomeTextThatStaysAsItIs, (const std::string& bytes)) {
    const std::u32string once = drawable(bytes);
    RC_ASSERT(drawable(to_utf8(once)) == once);
    for (const char32_t c : once) {
        RC_ASSERT(c >= 0x20 && c <= 0x10FFFF && !(c >= 0xD800 && c <= 0xDFFF));
    }
}

}  // namespace
}  // namespace toft::drawing
