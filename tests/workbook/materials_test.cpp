// The workbook, unpacked and read by Python's own zip and XML readers, against the CSV of the same
// list, row for row.

#include "workbook/materials.h"

#include <gtest/gtest.h>

#include <unistd.h>

#include <cmath>
#include <cstdio>
#include <filesystem>
#include <fstream>

namespace toft::workbook {
namespace {

using ware::Prices;

const About about{"Barn and byre", "BS 7671; data 2026", "A competent person decides",
                  "2026-11-29"};

struct Verdict {
    int code = 0;
    std::string says;
};

Verdict python(const std::string& book, const std::string& csv) {
    const auto folder = std::filesystem::temp_directory_path();
    const std::string stem = (folder / ("toft-book-" + std::to_string(getpid()))).string();
    std::ofstream(stem + ".xlsx", std::ios::binary) << book;
    std::ofstream(stem + ".csv", std::ios::binary) << csv;
    const std::string command = "python3 -B " TOFT_SOURCE_DIR "/tests/workbook/read_workbook.py " +
                                stem + ".xlsx " + stem + ".csv 2>&1";
    Verdict verdict;
    std::FILE* pipe = popen(command.c_str(), "r");
    if (!pipe) return {1, "python3 did not start"};
    char buffer[4096];
    for (std::size_t n; (n = std::fread(buffer, 1, sizeof buffer, pipe)) > 0;)
        verdict.says.append(buffer, n);
    verdict.code = pclose(pipe);
    std::filesystem::remove(stem + ".xlsx");
    std::filesystem::remove(stem + ".csv");
    return verdict;
}

ware::Row row(const std::string& what, double quantity, double each) {
    ware::Row r;
    r.group = ware::Group::circuits;
    r.what = what;
    r.size = "2-core and earth 2.5 mm²";
    r.quantity = quantity;
    r.unit = "m";
    r.order = "cut 19 m";
    r.note = "says \"why\", in plain words";
    r.each = pounds(each);
    r.amount = pounds(std::floor(quantity * each * 100 + 0.5) / 100);
    r.lines = 1;
    return r;
}

/// 40 circuits with names of 60 characters.
ware::List forty() {
    ware::List list;
    double pence = 0;
    for (int i = 0; i < 40; ++i) {
        const std::string name = "Circuit " + std::to_string(100 + i) + " " + std::string(48, 'x');
        list.rows.push_back(row(name, 10.123 + i / 7.0, 1.05 + i / 100.0));
        pence += std::round(list.rows.back().amount->number() * 100);
    }
    list.amount = pounds(pence / 100);
    list.handling.push_back({"Garage", "3-core 10 mm²", "36.9 m", "117 mm", ""});
    return list;
}

std::string book_of(const ware::List& list, Prices prices) {
    const auto book = materials(list, about, prices);
    EXPECT_TRUE(book.has_value());
    return book ? *book : std::string();
}

TEST(Workbook, HoldsEveryRowOfTheList) {
    const ware::List list = forty();
    const Verdict verdict = python(book_of(list, Prices::with), ware::csv_of(list, Prices::with));
    EXPECT_EQ(verdict.code, 0) << verdict.says;
    EXPECT_EQ(verdict.says.rfind("rows 40 numbers 120 formulas ", 0), 0u) << verdict.says;
}

TEST(Workbook, WithoutPricesHasNoMoney) {
    const ware::List list = forty();
    const Verdict verdict =
        python(book_of(list, Prices::without), ware::csv_of(list, Prices::without));
    EXPECT_EQ(verdict.code, 0) << verdict.says;
    EXPECT_EQ(verdict.says, "rows 40 numbers 40 formulas 0\n");
}

TEST(Workbook, AReaderThatIsGivenAnotherListSaysSo) {
    ware::List other = forty();
    other.rows[17].quantity += 1;
    const Verdict verdict =
        python(book_of(forty(), Prices::with), ware::csv_of(other, Prices::with));
    EXPECT_NE(verdict.code, 0);
    EXPECT_NE(verdict.says.find("row 18, quantity"), std::string::npos) << verdict.says;
}

TEST(Workbook, TextThatLooksLikeAFormulaIsText) {
    ware::List list = forty();
    list.rows[0].what = "=1+1";
    list.rows[1].note = "@SUM(A1) & <b>";
    const Verdict verdict = python(book_of(list, Prices::with), ware::csv_of(list, Prices::with));
    EXPECT_EQ(verdict.code, 0) << verdict.says;
}

TEST(Workbook, AnAmountThatIsNotQuantityTimesPriceIsAPlainNumber) {
    ware::List list;
    list.rows = {row("with an extra", 3, 10)};
    list.rows[0].amount = pounds(31);
    list.amount = pounds(31);
    const Verdict verdict = python(book_of(list, Prices::with), ware::csv_of(list, Prices::with));
    EXPECT_EQ(verdict.says, "rows 1 numbers 3 formulas 0\n");
}

TEST(Workbook, TheSameListGivesTheSameBytes) {
    const std::string first = book_of(forty(), Prices::with);
    EXPECT_TRUE(first == book_of(forty(), Prices::with));
}

TEST(Workbook, AnEmptyListIsAWorkbookToo) {
    const Verdict verdict = python(book_of({}, Prices::without), ware::csv_of({}, Prices::without));
    EXPECT_EQ(verdict.says, "rows 0 numbers 0 formulas 0\n");
}

TEST(Workbook, WhatIsNoDateIsRefused) {
    for (const char* date : {"", "29.11.2026", "2026-13-01", "2026-11-2x", "1969-12-31"}) {
        About undated = about;
        undated.date = date;
        EXPECT_FALSE(materials(forty(), undated, Prices::with).has_value()) << date;
    }
}

}  // namespace
}  // namespace toft::workbook
