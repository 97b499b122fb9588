#include "base/csv.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace toft {
namespace {

using Cells = std::vector<std::string>;

std::vector<Cells> rows(std::string_view text) {
    const auto table = parse_csv("t.csv", text);
    std::vector<Cells> all;
    if (!table) {
        ADD_FAILURE() << table.error().front().says;
        return all;
    }
    for (const CsvRow& row : table->rows) all.push_back(row.cells);
    return all;
}

std::string says(std::string_view text) {
    const auto table = parse_csv("t.csv", text);
    return table ? "" : table.error().front().pointer + " " + table.error().front().says;
}

TEST(Csv, ReadsHeaderAndRows) {
    const auto table = parse_csv("t.csv", "a,b\n1,2\n3,4\n");
    ASSERT_TRUE(table);
    EXPECT_EQ(table->header, (Cells{"a", "b"}));
    ASSERT_EQ(table->rows.size(), 2u);
    EXPECT_EQ(table->rows[1].cells, (Cells{"3", "4"}));
    EXPECT_EQ(table->rows[1].line, 3);
}

TEST(Csv, TheLastLineNeedsNoEnd) { EXPECT_EQ(rows("a\n1\n2"), (std::vector<Cells>{{"1"}, {"2"}})); }

TEST(Csv, TakesTheLineEndsOfAllMachines) {
    EXPECT_EQ(rows("a,b\r\n1,2\r\n"), (std::vector<Cells>{{"1", "2"}}));
}

TEST(Csv, QuotedCellsHoldCommasQuotesAndLineEnds) {
    EXPECT_EQ(rows("a,b\n\"1,5\",\"he said \"\"no\"\"\"\n"),
              (std::vector<Cells>{{"1,5", "he said \"no\""}}));
    const auto table = parse_csv("t.csv", "a\n\"one\ntwo\"\nthree\n");
    ASSERT_TRUE(table);
    EXPECT_EQ(table->rows[0].cells, Cells{"one\ntwo"});
    EXPECT_EQ(table->rows[1].line, 4);
}

TEST(Csv, EmptyCellsAreCells) {
    EXPECT_EQ(rows("a,b,c\n,,\n"), (std::vector<Cells>{{"", "", ""}}));
}

TEST(Csv, RefusesAnEmptyFile) { EXPECT_EQ(says(""), "t.csv:1 the table is empty"); }

TEST(Csv, RefusesRaggedRowsAndNamesEachLine) {
    EXPECT_EQ(says("a,b\n1\n"), "t.csv:2 1 cells where the header has 2");
    EXPECT_EQ(says("a,b\n1,2,3\n"), "t.csv:2 3 cells where the header has 2");
    const auto table = parse_csv("t.csv", "a,b\n1\n1,2\n3\n");
    ASSERT_FALSE(table);
    EXPECT_EQ(table.error().size(), 2u);
}

TEST(Csv, RefusesAQuoteThatIsNeverClosed) {
    EXPECT_NE(says("a\n\"open\n").find("quote"), std::string::npos);
}

TEST(Csv, RefusesTextAfterAClosedQuote) {
    EXPECT_FALSE(parse_csv("t.csv", "a,b\n\"1\"x,2\n"));
    EXPECT_FALSE(parse_csv("t.csv", "a\n\"1\"x\n"));
    EXPECT_FALSE(parse_csv("t.csv", "a\n\"1\"\"\"x\n"));
}

TEST(Csv, RefusesAQuoteInsideACellThatDoesNotBeginWithOne) {
    EXPECT_NE(says("a,b\n1\"2,3\"\n").find("quote"), std::string::npos);
}

RC_GTEST_PROP(Csv, AnyBytesEndInATableOrInFaults, ()) {
    const auto text = *rc::gen::container<std::string>(rc::gen::weightedOneOf<char>(
        {{3, rc::gen::element(',', '"', '\n', '\r')}, {2, rc::gen::arbitrary<char>()}}));
    const auto table = parse_csv("t.csv", text);
    if (table) {
        for (const CsvRow& row : table->rows) RC_ASSERT(row.cells.size() == table->header.size());
    } else {
        RC_ASSERT(!table.error().empty());
    }
}

RC_GTEST_PROP(Csv, WhatIsQuotedRightComesBack, ()) {
    const auto cells = *rc::gen::nonEmpty<Cells>();
    std::string header;
    std::string row;
    for (std::size_t i = 0; i < cells.size(); ++i) {
        header += i ? ",c" : "c";
        row += i ? ",\"" : "\"";
        for (char c : cells[i]) row += c == '"' ? std::string("\"\"") : std::string(1, c);
        row += '"';
    }
    const auto table = parse_csv("t.csv", header + "\n" + row + "\n");
    RC_ASSERT(table.has_value());
    RC_ASSERT(table->rows.size() == 1u);
    RC_ASSERT(table->rows[0].cells == cells);
}

TEST(CsvTable, ACellThatIsWrittenIsReadBackTheSame) {
    for (const char* cell : {"", "plain", "a,b", "say \"so\"", "two\nlines", "\r", "\"", ",,"}) {
        const auto table = parse_csv("t.csv", "one,two\n" + csv_cell(cell) + ",end\n");
        ASSERT_TRUE(table) << cell;
        EXPECT_EQ(table->rows.at(0).cells.at(0), cell);
    }
}

}  // namespace
}  // namespace toft
