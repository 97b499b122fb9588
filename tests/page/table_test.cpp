// Tables that break between rows.

#include "page/leaves.h"
#include "page/piece.h"

#include <gtest/gtest.h>

namespace toft::page {
namespace {

constexpr double table_wide = 600;

std::vector<Read> reads_of(const Piece& piece) {
    std::vector<Read> all;
    read_items(piece.items, {}, 0, all);
    return all;
}

TEST(Table, FiguresStandRightAndTheirHeadWithThem) {
    const Pieces rows =
        rows_of({{{"What", 3}, {"Ω", 1, Side::right}}, {{{"loop", "0.35"}}}}, table_wide);
    ASSERT_EQ(rows.size(), 2u);
    EXPECT_NEAR(reads_of(rows[0])[1].box.right, table_wide, 1e-6);
    EXPECT_NEAR(reads_of(rows[1])[1].box.right, table_wide, 1e-6);
    EXPECT_TRUE(rows[0].keep_next) << "a head never stands without a row";
}

TEST(Table, CellsNeverReachIntoTheNextColumn) {
    const std::string word(60, 'W');
    const Pieces rows = rows_of({{{"", 1}, {"", 1}}, {{{word, "next"}}}}, table_wide);
    ASSERT_EQ(rows.size(), 1u);
    const auto reads = reads_of(rows[0]);
    for (const Read& one : reads) {
        if (one.words != "next") {
            EXPECT_LT(one.box.right, reads.back().box.left);
        }
    }
}

TEST(Table, ARowThatNoPageHoldsIsCutBetweenLines) {
    std::string words;
    for (int i = 0; i < 700; ++i) words += "w" + std::to_string(i) + " ";
    const Pieces rows = rows_of({{{"", 1}, {"", 3}}, {{{words, "short"}}}}, table_wide);
    ASSERT_GT(rows.size(), 2u);
    std::string all;
    for (const Piece& piece : rows) {
        EXPECT_LT(piece.height, field.height());
        all += run_on(reads_of(piece));
    }
    for (const int i : {0, 350, 699}) {
        EXPECT_NE(all.find("w" + std::to_string(i)), std::string::npos);
    }
}

TEST(Table, RowsToWriteInAreHighEnoughForAPen) {
    const Table table{{{"Test", 3}, {"Reading", 1}}, {{{"R1+R2", ""}}}, true};
    EXPECT_GE(rows_of(table, table_wide).back().height, drawing::units_of_mm(6));
}

TEST(Table, TheNameOfAGroupSpansTheColumnsAndStandsWithItsFirstRow) {
    const Table table{{{"", 1}, {"", 1}},
                      {{{"a long name of a group of rows that spans both"}, true}, {{"a", "b"}}}};
    const Pieces rows = rows_of(table, table_wide);
    ASSERT_EQ(rows.size(), 2u);
    EXPECT_TRUE(rows[0].keep_next);
    EXPECT_EQ(reads_of(rows[0]).size(), 1u);
}

TEST(Table, OfNoColumnsIsNothing) { EXPECT_TRUE(rows_of({}, table_wide).empty()); }

}  // namespace
}  // namespace toft::page
