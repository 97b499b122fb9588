#include "parts/words.h"

#include "drawing/measure.h"
#include "support/jobs.h"

#include <gtest/gtest.h>

namespace toft::parts {
namespace {

TEST(Words, WhatFitsIsLeftAlone) {
    EXPECT_EQ(shortened("water pipe", 200, 11), "water pipe");
    EXPECT_EQ(shortened("", 200, 11), "");
}

TEST(Words, WhatDoesNotFitEndsInDotsAndFits) {
    for (const double width : {20.0, 60.0, 133.0}) {
        const std::string cut = shortened("a very long name of an outbuilding", width, 11);
        EXPECT_LE(drawing::text_width(cut, 11), width);
        EXPECT_EQ(cut.substr(cut.size() - 3), "…");
        EXPECT_GT(drawing::text_width(cut + "mmm", 11), width - 15);
    }
}

TEST(Words, NoLetterIsCutInTwo) {
    const std::string cut = shortened("ééééééééééééééééééééé", 50, 11);
    EXPECT_EQ(cut.find("\xEF\xBF\xBD"), std::string::npos);
    EXPECT_EQ(cut.substr(0, 2), "é");
}

TEST(Words, ParagraphKeepsToItsRoom) {
    const std::string text =
        "one two three four five six seven eight nine ten eleven twelve " + std::string(300, 'W');
    const auto lines = paragraph(text, 90, 11, 3);
    ASSERT_EQ(lines.size(), 3u);
    for (const std::string& line : lines) EXPECT_LE(drawing::text_width(line, 11), 90);
    EXPECT_EQ(lines.back().substr(lines.back().size() - 3), "…");
}

TEST(Words, ParagraphThatFitsHasNoDots) {
    const auto lines = paragraph("one two", 300, 11, 3);
    ASSERT_EQ(lines.size(), 1u);
    EXPECT_EQ(lines[0], "one two");
}

TEST(Words, LengthsSayTheirRangeOrThatTheyAreNotKnown) {
    EXPECT_EQ(length_words(support::measured(metres(21))), "21 m");
    EXPECT_EQ(length_words(support::between(metres(18), metres(24))), "18 to 24 m");
    EXPECT_EQ(length_words({}), "length not known");
}

TEST(Words, NamesAndUnits) {
    EXPECT_EQ(mm2(2.5), "2.5 mm²");
    EXPECT_EQ(name_or("", "shed"), "shed");
    EXPECT_EQ(name_or("Potting shed", "shed"), "Potting shed");
    EXPECT_EQ(capital("house"), "House");
    EXPECT_EQ(capital("écurie"), "écurie");
}

TEST(Words, AUnitStaysWithItsFigure) {
    const drawing::TextStyle style{.size = 12};
    const double room = drawing::text_width("armour, 13.6", 12) + 1;
    const auto lines = broken("armour, 13.6 mm", room, style, 3);
    EXPECT_EQ(lines, (std::vector<std::string>{"armour,", "13.6 mm"}));
}

}  // namespace
}  // namespace toft::parts
