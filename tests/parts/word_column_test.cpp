#include "parts/word_column.h"

#include "picture/looking.h"

#include <gtest/gtest.h>

namespace toft::parts {
namespace {

using namespace picture;

TEST(WordColumn, WordsStandUnderOneAnotherInsideIt) {
    WordColumn column(10, 210, 20);
    column.words("a sentence that is longer than the column is wide, by far", {.size = 12});
    const double first = column.y();
    column.heading("a name");
    column.words(hostile_name(), {.size = 12}, 4, 30);
    EXPECT_GT(column.y(), first);
    const double foot = column.y();
    const drawing::Items items = column.take();
    EXPECT_EQ(clashes(items, {10, 20, 210, foot}), "");
    EXPECT_GE(texts_in(items).size(), 5u);
    EXPECT_EQ(texts_in(items).back().at.x, 40);
}

TEST(WordColumn, WhatDoesNotFitIsCutAndAUnitStaysWithItsFigure) {
    WordColumn column(0, 100, 0);
    column.words("one two three four five six seven eight nine ten", {.size = 12}, 2);
    const auto lines = texts_in(column.take());
    ASSERT_EQ(lines.size(), 2u);
    EXPECT_NE(line_of(lines.back()).find("…"), std::string::npos);
    WordColumn units(0, drawing::text_width("headroom 44", 12) + 1, 0);
    units.words("headroom 44 %", {.size = 12});
    const auto held = texts_in(units.take());
    ASSERT_EQ(held.size(), 2u);
    EXPECT_EQ(line_of(held[1]), "44 %");
}

TEST(WordColumn, ThingsPlacedMoveItDownButNeverUp) {
    WordColumn column(0, 100, 50);
    column.placed({drawing::Circle{{5, 60}, 4, {}}}, 64);
    EXPECT_EQ(column.y(), 64);
    column.placed({}, 10);
    EXPECT_EQ(column.y(), 64);
    column.gap(6);
    EXPECT_EQ(column.y(), 70);
    EXPECT_EQ(column.take().size(), 1u);
}

}  // namespace
}  // namespace toft::parts
