#include "support/catalogue.h"
#include "support/spoilt_tables.h"

#include <gtest/gtest.h>

namespace toft::tables {
namespace {

using support::SpoiltTables;

const CableConstants& constants() { return support::catalogue().cable_constants; }

TEST(LoadCableConstants, MetalsReadAsPrinted) {
    EXPECT_EQ(constants().copper.alpha20.value, per_kelvin(0.00393));
    EXPECT_EQ(constants().copper.beta.value, kelvins(234.5));
    EXPECT_EQ(constants().steel.beta.value, kelvins(202));
    EXPECT_EQ(constants().aluminium.big_k.value, 148);
    EXPECT_EQ(constants().aluminium.alpha20.value, per_kelvin(0.00403));
}

TEST(LoadCableConstants, ASeparateConductorStartsCoolAndEndsAsItsPvcAllows) {
    EXPECT_EQ(constants().separate.initial.value, celsius(30));
    EXPECT_EQ(constants().separate.final.value, celsius(160));
    EXPECT_EQ(constants().separate.k.value, heat_constant(143));
}

TEST(LoadCableConstants, TheArmoursAlternatingCurrentFiguresReadAsPrinted) {
    EXPECT_EQ(constants().armour_ac_factor.value, 1.1);
    EXPECT_EQ(constants().armour_x.value, milliohms_per_metre(0.3));
}

TEST(LoadCableConstants, FactorTablesAreSortedAndFall) {
    const CableConstants& c = constants();
    for (const auto* list : {&c.soil_direct, &c.soil_duct, &c.depth_direct, &c.depth_duct,
                             &c.grouped_clipped, &c.grouped_tray, &c.grouped_enclosed,
                             &c.grouped_direct, &c.grouped_duct, &c.insulation}) {
        ASSERT_GE(list->size(), 2u);
        for (std::size_t i = 1; i < list->size(); ++i) {
            EXPECT_LT((*list)[i - 1].x, (*list)[i].x);
            EXPECT_GE((*list)[i - 1].y.value, (*list)[i].y.value);
        }
    }
    EXPECT_EQ(c.grouped_enclosed[1].y.value, 0.8);
    EXPECT_EQ(c.grouped_clipped[1].y.value, 0.85);
    EXPECT_EQ(c.soil_duct[0].y.value, 1.28);
}

TEST(LoadCableConstants, RefusesAFactorTableWithoutRows) {
    EXPECT_TRUE(SpoiltTables()
                    .keep_lines("cable/factor_insulation.csv", 1)
                    .refused("cable/factor_insulation.csv", "no rows"));
    EXPECT_TRUE(SpoiltTables()
                    .change_all("cable/factor_grouping.csv", "bunched,", "clipped,")
                    .refused("cable/factor_grouping.csv", "no rows for bunched"));
}

TEST(LoadCableConstants, RefusesWordsItDoesNotKnow) {
    EXPECT_TRUE(SpoiltTables()
                    .change("cable/factor_soil.csv", "duct,", "pipe,")
                    .refused("cable/factor_soil.csv:9", "pipe is no laying"));
    EXPECT_TRUE(SpoiltTables()
                    .change("cable/material.csv", "steel,", "tin,")
                    .refused("cable/material.csv:4", "tin is no metal"));
}

TEST(LoadCableConstants, SaysWhatIsMissing) {
    EXPECT_TRUE(SpoiltTables()
                    .change("cable/material.csv", "aluminium,", "steel,")
                    .refused("cable/material.csv", "no constants of aluminium"));
    EXPECT_TRUE(SpoiltTables()
                    .change("cable/fault_k.csv", "separate,copper", "separate,steel")
                    .refused("cable/fault_k.csv", "separate copper"));
    EXPECT_TRUE(SpoiltTables()
                    .change("cable/armour_ac.csv", "ac_factor,", "factor,")
                    .refused("cable/armour_ac.csv", "no ac_factor"));
    EXPECT_TRUE(SpoiltTables()
                    .change("cable/armour_ac.csv", "reactance,", "x,")
                    .refused("cable/armour_ac.csv", "no reactance"));
}

}  // namespace
}  // namespace toft::tables
