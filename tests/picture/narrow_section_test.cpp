#include "picture/narrow_section.h"

#include "picture/looking.h"

#include <gtest/gtest.h>

namespace toft::picture {
namespace {

struct Drawn {
    drawing::Items items;
    double foot = 0;
};

Drawn section(const Example& one, std::size_t index, double width) {
    const answer::SchemeAnswer* scheme =
        index < one.answer.schemes.size() ? &one.answer.schemes[index] : nullptr;
    parts::WordColumn column(10, width - 10, 10);
    narrow_section(set_stage(one.job, scheme, width), column);
    const double foot = column.y();
    return {column.take(), foot};
}

int count_text(const drawing::Items& items, const std::string& line) {
    int count = 0;
    for (const drawing::Text& text : texts_in(items)) count += line_of(text) == line;
    return count;
}

TEST(NarrowSection, EveryNumberStandsInTheSectionAndInTheList) {
    for (const double width : {320.0, 360.0, 794.0}) {
        const Drawn drawn = section(example("demo"), 0, width);
        const int numbers = count_kind(drawn.items, "number");
        EXPECT_GE(numbers, 8);
        for (int i = 1; i <= numbers; ++i) {
            EXPECT_EQ(count_text(drawn.items, std::to_string(i)), 2) << i << " " << width;
        }
        EXPECT_EQ(count_text(drawn.items, std::to_string(numbers + 1)), 0);
        EXPECT_TRUE(says(drawn.items, "supply TN-C-S"));
        EXPECT_TRUE(says(drawn.items, "water pipe"));
    }
}

TEST(NarrowSection, EveryLegHasItsLetterAndItsLength) {
    const Drawn drawn = section(example("demo"), 0, 360);
    for (const char* letter : {"a", "b", "c"}) EXPECT_EQ(count_text(drawn.items, letter), 2);
    EXPECT_EQ(count_text(drawn.items, "d"), 0);
    EXPECT_TRUE(says(drawn.items, "21 m, buried direct under lawn, 0.6 m deep"));
    EXPECT_TRUE(says(drawn.items, "the whole run 30 m"));
    EXPECT_TRUE(says(drawn.items, "buildings not to scale"));
}

TEST(NarrowSection, NamesInTheListAreNotCutWherePaperHasThemWhole) {
    const Drawn drawn = section(example("demo"), 0, 360);
    EXPECT_FALSE(says(drawn.items, "…"));
}

TEST(NarrowSection, TheDrawingStaysInsideItsColumn) {
    for (const char* name : {"demo", "tt-shed", "steel-container"}) {
        for (const double width : {320.0, 360.0, 794.0}) {
            const Drawn drawn = section(example(name), 0, width);
            const drawing::Box box = drawing::box_of(drawn.items);
            EXPECT_GE(box.left, 0) << name << width;
            EXPECT_LE(box.right, width) << name << width;
            EXPECT_LE(box.bottom, drawn.foot + 4) << name << width;
            EXPECT_EQ(count_kind(drawn.items, "section"), 1);
        }
    }
}

TEST(NarrowSection, WithoutASchemeThePlaceStands) {
    const Drawn drawn = section(example("caravan-no-scheme"), 0, 360);
    EXPECT_GE(count_kind(drawn.items, "number"), 3);
}

}  // namespace
}  // namespace toft::picture
