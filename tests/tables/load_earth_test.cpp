#include "tables/sheet.h"

#include "support/catalogue.h"
#include "support/spoilt_tables.h"

#include <gtest/gtest.h>

namespace toft::tables {
namespace {

using support::SpoiltTables;

TEST(LoadEarth, FactorsOfRodsComeByArrangementInOrder) {
    const ElectrodeConstants& electrode = support::catalogue().electrode;
    ASSERT_EQ(electrode.rods_in_line.size(), 9u);
    ASSERT_EQ(electrode.rods_in_square.size(), 14u);
    EXPECT_EQ(electrode.rods_in_line.front().x, 2);
    EXPECT_EQ(electrode.rods_in_line.front().y.value, 1);
    EXPECT_EQ(electrode.rods_in_square.back().x, 20);
    EXPECT_EQ(electrode.rods_in_square.back().y.value, 9.4);
    EXPECT_EQ(electrode.rods_in_line.front().y.citation->basis, Basis::memory);
}

TEST(LoadEarth, StarsAndConcreteComeWithTheirCitations) {
    const ElectrodeConstants& electrode = support::catalogue().electrode;
    ASSERT_EQ(electrode.stars.size(), 5u);
    EXPECT_EQ(electrode.stars[2].arms, 4);
    EXPECT_EQ(electrode.stars[2].c1.value, -1.071);
    EXPECT_EQ(electrode.stars[2].c4.citation->basis, Basis::published);
    EXPECT_EQ(electrode.concrete_low.value, ohm_metres(30));
    EXPECT_EQ(electrode.concrete_high.value, ohm_metres(90));
}

TEST(LoadEarth, WhatIsMissingOrNoNumberIsRefused) {
    EXPECT_TRUE(SpoiltTables()
                    .change("earth/rod_lambda.csv", "line,3,1.66", "line,3,much")
                    .refused("earth/rod_lambda.csv", "much"));
    EXPECT_TRUE(SpoiltTables()
                    .keep_lines("earth/concrete.csv", 1)
                    .refused("earth/concrete.csv", "one row"));
    EXPECT_TRUE(SpoiltTables()
                    .change("earth/wire_star.csv", "arms,c0", "arms,c9")
                    .refused("earth/wire_star.csv", "c0"));
}

}  // namespace
}  // namespace toft::tables
