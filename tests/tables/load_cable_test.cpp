#include "tables/sheet.h"

#include "support/catalogue.h"
#include "support/spoilt_tables.h"

#include <gtest/gtest.h>

namespace toft::tables {
namespace {

using support::SpoiltTables;

TEST(LoadCable, TenSquareMillimetresReadsAsPrinted) {
    const Cable& cable = support::cable(2, 10);
    EXPECT_NEAR(cable.r20.value.number(), 1.83e-3, 1e-15);
    EXPECT_NEAR(cable.armour_r20.value.number(), 6.0e-3, 1e-15);
    EXPECT_EQ(cable.armour_area.value, square_millimetres(26));
    EXPECT_EQ(cable.rating[static_cast<std::size_t>(ReferenceMethod::c)].value, amperes(85));
    EXPECT_EQ(cable.rating[static_cast<std::size_t>(ReferenceMethod::e)].value, amperes(90));
    EXPECT_EQ(cable.rating[static_cast<std::size_t>(ReferenceMethod::d)].value, amperes(71));
    EXPECT_NEAR(cable.drop_r.value.number(), 4.7e-3, 1e-15);
}

TEST(LoadCable, MetalsAndHeatLimitsReadAsPrinted) {
    const CableConstants& c = support::catalogue().cable_constants;
    EXPECT_EQ(c.copper.alpha20.value, per_kelvin(0.00393));
    EXPECT_EQ(c.steel.beta.value, 202);
    EXPECT_EQ(c.live.k.value, heat_constant(143));
    EXPECT_EQ(c.armour.k.value, heat_constant(46));
    EXPECT_EQ(c.armour.initial.value, celsius(80));
    EXPECT_EQ(c.armour_ac_factor.value, 1.1);
}

TEST(LoadCable, ThreeCoreCableIsRatedAsTwoLoadedConductors) {
    for (const Cable& cable : support::catalogue().cables) {
        if (cable.cores != 3) continue;
        const Cable& two = support::cable(2, cable.section.number());
        for (std::size_t m = 0; m < reference_methods; ++m) {
            EXPECT_EQ(cable.rating[m].value, two.rating[m].value) << cable.section.number();
        }
        EXPECT_EQ(cable.drop_r.value, two.drop_r.value) << cable.section.number();
    }
}

TEST(LoadCable, SizesRiseAndEverythingElseFollows) {
    const auto& cables = support::catalogue().cables;
    for (std::size_t i = 1; i < cables.size(); ++i) {
        const Cable& thin = cables[i - 1];
        const Cable& thick = cables[i];
        if (thin.cores != thick.cores) continue;
        EXPECT_LT(thin.section, thick.section);
        EXPECT_GT(thin.r20.value, thick.r20.value);
        EXPECT_GE(thin.armour_r20.value, thick.armour_r20.value);
        EXPECT_LE(thin.armour_area.value, thick.armour_area.value);
        EXPECT_LE(thin.overall.value, thick.overall.value);
        EXPECT_GT(thin.drop_r.value, thick.drop_r.value);
        for (std::size_t m = 0; m < reference_methods; ++m) {
            EXPECT_LT(thin.rating[m].value, thick.rating[m].value);
        }
    }
}

TEST(LoadCable, FactorTablesAreSortedAndFall) {
    const CableConstants& c = support::catalogue().cable_constants;
    for (const auto* list : {&c.ambient_air, &c.ambient_ground, &c.soil_direct, &c.soil_duct,
                             &c.depth_direct, &c.depth_duct, &c.grouped_clipped, &c.grouped_tray,
                             &c.grouped_direct, &c.grouped_duct, &c.insulation}) {
        ASSERT_GE(list->size(), 2u);
        for (std::size_t i = 1; i < list->size(); ++i) {
            EXPECT_LT((*list)[i - 1].x, (*list)[i].x);
            EXPECT_GE((*list)[i - 1].y.value, (*list)[i].y.value);
        }
    }
}

TEST(LoadCable, RefusesNumbersThatAreNone) {
    for (const char* bad : {"nan", "inf", "", "twelve", "12.1x"}) {
        EXPECT_TRUE(SpoiltTables()
                        .change("cable/conductor_resistance.csv", "copper,1.5,12.1,",
                                std::string("copper,1.5,") + bad + ",")
                        .refused("cable/conductor_resistance.csv:2", "not a number"))
            << bad;
    }
}

TEST(LoadCable, RefusesAMissingColumn) {
    EXPECT_TRUE(SpoiltTables()
                    .change("cable/rating.csv", "current_a", "current")
                    .refused("cable/rating.csv", "no column current_a"));
    EXPECT_TRUE(SpoiltTables()
                    .change("cable/fault_k.csv", "final_c", "final")
                    .refused("cable/fault_k.csv", "no column final_c"));
}

TEST(LoadCable, RefusesAMethodItDoesNotKnow) {
    EXPECT_TRUE(SpoiltTables()
                    .change("cable/rating.csv", ",2,1.5,C,", ",2,1.5,F,")
                    .refused("cable/rating.csv:2", "reference method"));
}

TEST(LoadCable, RefusesASizeWithHalfItsFigures) {
    EXPECT_TRUE(SpoiltTables()
                    .change("cable/armour_area.csv", "armoured XLPE copper,2,10,",
                            "armoured XLPE copper,2,11,")
                    .refused("cable/", "incomplete for 2 x 10"));
    EXPECT_TRUE(SpoiltTables()
                    .change("cable/voltage_drop.csv", ",2,10,4.7,", ",2,12,4.7,")
                    .refused("cable/", "incomplete for 2 x 10"));
}

TEST(LoadCable, RefusesAFactorTableWithoutRows) {
    EXPECT_TRUE(
        SpoiltTables().keep_lines("cable/factor_insulation.csv", 1).refused("cable/", "no rows"));
}

}  // namespace
}  // namespace toft::tables
