#include "ware/merge.h"

#include "ware/pence.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace toft::ware {
namespace {

Draft draft(const std::string& what, const std::string& size, double quantity, double each) {
    Draft d;
    d.row.group = Group::run;
    d.row.what = what;
    d.row.size = size;
    d.row.quantity = quantity;
    d.row.each = pounds(each);
    d.row.amount = pounds(quantity * each);
    d.row.lines = 1;
    return d;
}

TEST(Merge, TheSameIsOneRowAndKeepsItsNotes) {
    auto a = draft("cleats", "20", 3, 1.1);
    auto b = draft("cleats", "20", 4, 1.1);
    a.row.note = "wall";
    b.row.note = "fence";
    const auto rows = merged({a, b});
    ASSERT_EQ(rows.size(), 1u);
    EXPECT_EQ(rows[0].row.quantity, 7);
    EXPECT_EQ(rows[0].row.lines, 2);
    EXPECT_EQ(rows[0].row.note, "wall; fence");
    EXPECT_EQ(pence(*rows[0].row.amount), 770);
}

TEST(Merge, WhatDiffersInSizeOrPriceStaysApart) {
    EXPECT_EQ(merged({draft("a", "1", 1, 1), draft("a", "2", 1, 1)}).size(), 2u);
    EXPECT_EQ(merged({draft("a", "1", 1, 1), draft("a", "1", 1, 2)}).size(), 2u);
    auto unpriced = draft("a", "1", 1, 1);
    unpriced.row.each = unpriced.row.amount = std::nullopt;
    EXPECT_EQ(merged({draft("a", "1", 1, 1), unpriced}).size(), 2u);
}

TEST(Merge, SizesGoByTheirFigures) {
    EXPECT_TRUE(by_figures("2.5 mm²", "10 mm²"));
    EXPECT_FALSE(by_figures("16 mm²", "10 mm²"));
    EXPECT_TRUE(by_figures("3-core 10 mm²", "3-core 16 mm²"));
    EXPECT_TRUE(by_figures("20", "20S"));
    EXPECT_FALSE(by_figures("20", "20"));
    const auto rows = merged({draft("a", "16", 1, 1), draft("a", "2.5", 1, 1)});
    EXPECT_EQ(rows[0].row.size, "2.5");
}

RC_GTEST_PROP(Merge, NothingIsLostWhateverIsAlike, ()) {
    const auto kinds = *rc::gen::container<std::vector<int>>(rc::gen::inRange(0, 6));
    std::vector<Draft> drafts;
    long long sum = 0;
    double quantity = 0;
    for (const int kind : kinds) {
        drafts.push_back(draft(kind % 2 ? "a" : "b", std::to_string(kind / 2), kind + 1, 0.37));
        sum += pence(*drafts.back().row.amount);
        quantity += kind + 1;
    }
    const auto lines = static_cast<int>(drafts.size());
    int merged_lines = 0;
    for (const Draft& row : merged(drafts)) {
        sum -= pence(*row.row.amount);
        quantity -= row.row.quantity;
        merged_lines += row.row.lines;
    }
    RC_ASSERT(sum == 0);
    RC_ASSERT(quantity == 0);
    RC_ASSERT(merged_lines == lines);
}

}  // namespace
}  // namespace toft::ware
