#include "diagram/note.h"

#include "diagram/sheet.h"
#include "drawing/measure.h"

#include <gtest/gtest.h>

namespace toft::diagram {
namespace {

TEST(Note, NothingLeavesItsColumnsHoweverLong) {
    const std::string hostile = picture::hostile_name();
    const std::string many = "word " + hostile + " word word word word word word word word word";
    const Note note{hostile,
                    {many, hostile},
                    {{hostile, drawing::symbol("I", "b"), "17 A"}, {"load", {}, hostile}}};
    for (const double width : {320.0, 360.0, 794.0, 1400.0}) {
        const Columns c = columns_for(width);
        const SetNote set = set_note(note, c, 100);
        const drawing::Box room{c.words, 100, c.right + 1, set.foot};
        EXPECT_EQ(picture::clashes(set.items, room), "") << width;
    }
}

TEST(Note, FiguresStandBesideOnARoomySheetAndBelowOnANarrowOne) {
    const Note note{"circuit breaker", {"32 A"}, {{"breaking capacity", {}, "6 kA"}}};
    const SetNote roomy = set_note(note, columns_for(794), 0);
    const SetNote narrow = set_note(note, columns_for(360), 0);
    EXPECT_LT(roomy.foot, narrow.foot);
    for (const SetNote* set : {&roomy, &narrow}) {
        for (const char* words : {"circuit breaker", "32 A", "breaking capacity", "6 kA"}) {
            EXPECT_TRUE(says(set->items, words)) << words;
        }
    }
}

TEST(Note, AUnitStaysWithItsFigure) {
    const drawing::TextStyle style{.size = 11};
    for (double width = 40; width < 300; width += 3) {
        for (const std::string& line : broken(
                 "7 m clipped; 21 m buried, 0.6 m deep; 10 mm² copper, 30 mA", width, style, 9)) {
            EXPECT_NE(line.substr(0, 2), "m ") << width;
            EXPECT_NE(line.substr(0, 2), "mm") << width;
            EXPECT_NE(line.substr(0, 2), "mA") << width;
            EXPECT_EQ(line.find("\xC2\xA0"), std::string::npos);
        }
    }
}

TEST(Note, BrokenBoldLinesFit) {
    const drawing::TextStyle bold{.size = 12, .weight = drawing::Weight::bold};
    const auto lines = broken("a main switch of a very long name indeed, with more", 90, bold, 2);
    ASSERT_EQ(lines.size(), 2u);
    for (const std::string& line : lines) {
        EXPECT_LE(drawing::text_width(line, 12, drawing::Weight::bold), 90);
    }
    EXPECT_NE(lines.back().find("…"), std::string::npos);
    EXPECT_EQ(broken("short", 90, bold, 2), std::vector<std::string>{"short"});
}

}  // namespace
}  // namespace toft::diagram
