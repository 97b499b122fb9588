#include "support/catalogue.h"
#include "support/spoilt_tables.h"

#include <gtest/gtest.h>

#include <map>
#include <utility>

namespace toft::tables {
namespace {

using support::cable;
using support::SpoiltTables;

double rated(const Duty& duty, ReferenceMethod method) {
    return duty.rating[static_cast<std::size_t>(method)].value.number();
}

TEST(LoadCable, TenSquareMillimetresReadsAsPrinted) {
    const Cable& c = cable(2, 10);
    EXPECT_NEAR(c.r20.value.number(), 1.83e-3, 1e-15);
    EXPECT_NEAR(c.armour_r20.value.number(), 6.0e-3, 1e-15);
    EXPECT_EQ(c.armour_area.value, square_millimetres(26));
    EXPECT_EQ(c.overall.value, millimetres(18));
    EXPECT_EQ(rated(c.two, ReferenceMethod::c), 85);
    EXPECT_EQ(rated(c.two, ReferenceMethod::e), 90);
    EXPECT_EQ(rated(c.two, ReferenceMethod::d), 71);
    EXPECT_NEAR(c.two.drop_r.value.number(), 4.7e-3, 1e-15);
}

TEST(LoadCable, OneSizeOfEveryOtherFamilyReadsAsPrinted) {
    const Cable& pvc = cable(Family::armoured_pvc_copper, 4, 16);
    EXPECT_EQ(rated(pvc.three, ReferenceMethod::d), 64);
    EXPECT_EQ(pvc.armour_area.value, square_millimetres(72));
    const Cable& aluminium = cable(Family::armoured_xlpe_aluminium, 4, 95);
    EXPECT_EQ(rated(aluminium.three, ReferenceMethod::c), 214);
    EXPECT_NEAR(aluminium.r20.value.number(), 0.32e-3, 1e-15);
    EXPECT_EQ(aluminium.armour_area.value, cable(4, 95).armour_area.value);
    const Cable& flat = cable(Family::flat_twin_and_earth, 2, 2.5);
    EXPECT_EQ(rated(flat.two, ReferenceMethod::m100), 21);
    EXPECT_EQ(flat.cpc, square_millimetres(1.5));
    EXPECT_NEAR(flat.cpc_r20.value.number(), 12.1e-3, 1e-15);
    const Cable& round = cable(Family::unarmoured_xlpe_copper, 5, 35);
    EXPECT_EQ(rated(round.three, ReferenceMethod::a), 109);
    EXPECT_NEAR(round.three.drop_x.value.number(), 0.135e-3, 1e-15);
    EXPECT_EQ(rated(cable(Family::unarmoured_pvc_copper, 3, 1).two, ReferenceMethod::b), 13);
}

TEST(LoadCable, TheShopIsWhole) {
    std::map<std::pair<Family, int>, int> sizes;
    for (const Cable& c : support::catalogue().cables) ++sizes[{c.family, c.cores}];
    const std::map<std::pair<Family, int>, int> wanted = {
        {{Family::armoured_xlpe_copper, 2}, 11},   {{Family::armoured_xlpe_copper, 3}, 11},
        {{Family::armoured_xlpe_copper, 4}, 11},   {{Family::armoured_xlpe_copper, 5}, 9},
        {{Family::armoured_pvc_copper, 2}, 11},    {{Family::armoured_pvc_copper, 3}, 11},
        {{Family::armoured_pvc_copper, 4}, 11},    {{Family::armoured_xlpe_aluminium, 2}, 6},
        {{Family::armoured_xlpe_aluminium, 4}, 6}, {{Family::flat_twin_and_earth, 2}, 7},
        {{Family::unarmoured_xlpe_copper, 3}, 9},  {{Family::unarmoured_xlpe_copper, 5}, 9},
        {{Family::unarmoured_pvc_copper, 3}, 9},   {{Family::unarmoured_pvc_copper, 5}, 9}};
    EXPECT_EQ(sizes, wanted);
}

TEST(LoadCable, OnlyASpareCoreMayProtect) {
    for (const Cable& c : support::catalogue().cables) {
        const bool spare = c.cores == 3 || c.cores == 5;
        if (c.family == Family::flat_twin_and_earth) {
            EXPECT_GT(c.cpc, square_millimetres(0));
            EXPECT_LE(c.cpc, c.section);
        } else {
            EXPECT_EQ(c.cpc, spare ? c.section : square_millimetres(0));
        }
        EXPECT_EQ(c.cpc_r20.citation != nullptr, c.cpc > square_millimetres(0));
    }
}

TEST(LoadCable, OnlyArmouredCableHasArmour) {
    for (const Cable& c : support::catalogue().cables) {
        const bool armoured = make_of(support::catalogue(), c).armoured;
        EXPECT_EQ(c.armour_r20.citation != nullptr, armoured);
        EXPECT_EQ(c.armour_area.citation != nullptr, armoured);
        EXPECT_EQ(c.overall.citation != nullptr, armoured);
    }
}

TEST(LoadCable, TwoLoadedCoresAreRatedAlikeWhateverLiesIdleBesideThem) {
    for (const Cable& c : support::catalogue().cables) {
        if (c.family != Family::armoured_xlpe_copper) continue;
        const Cable& two = cable(2, c.section.number());
        for (std::size_t m = 0; m < reference_methods; ++m) {
            EXPECT_EQ(c.two.rating[m].value, two.two.rating[m].value) << c.section.number();
        }
        EXPECT_EQ(c.two.drop_r.value, two.two.drop_r.value) << c.section.number();
    }
}

TEST(LoadCable, ThreeLoadedCoresNeedThreeAndCarryLess) {
    for (const Cable& c : support::catalogue().cables) {
        EXPECT_EQ(c.three.drop_r.citation != nullptr, c.cores >= 3);
        for (std::size_t m = 0; m < reference_methods; ++m) {
            if (!c.three.rating[m].citation) continue;
            ASSERT_NE(c.two.rating[m].citation, nullptr);
            EXPECT_LT(c.three.rating[m].value, c.two.rating[m].value);
        }
        if (c.cores >= 3) {
            EXPECT_LT(c.three.drop_r.value, c.two.drop_r.value);
        }
    }
}

TEST(LoadCable, SizesRiseAndEverythingElseFollows) {
    const auto& cables = support::catalogue().cables;
    for (std::size_t i = 1; i < cables.size(); ++i) {
        const Cable& thin = cables[i - 1];
        const Cable& thick = cables[i];
        if (thin.family != thick.family || thin.cores != thick.cores) {
            EXPECT_LT(std::make_pair(thin.family, thin.cores),
                      std::make_pair(thick.family, thick.cores));
            continue;
        }
        EXPECT_LT(thin.section, thick.section);
        EXPECT_LE(thin.cpc, thick.cpc);
        EXPECT_GT(thin.r20.value, thick.r20.value);
        EXPECT_GE(thin.armour_r20.value, thick.armour_r20.value);
        EXPECT_LE(thin.armour_area.value, thick.armour_area.value);
        EXPECT_LE(thin.overall.value, thick.overall.value);
        for (const int phases : {1, 3}) {
            const Duty& before = thin.duty(phases);
            const Duty& after = thick.duty(phases);
            if (!before.drop_r.citation) continue;
            EXPECT_GT(before.drop_r.value, after.drop_r.value);
            for (std::size_t m = 0; m < reference_methods; ++m) {
                EXPECT_EQ(!before.rating[m].citation, !after.rating[m].citation);
                if (after.rating[m].citation) {
                    EXPECT_LT(before.rating[m].value, after.rating[m].value);
                }
            }
        }
    }
}

TEST(LoadCable, ConductorsComeByMetalAndSection) {
    const auto& all = support::catalogue().conductors;
    EXPECT_EQ(all.front().metal, Metal::copper);
    EXPECT_EQ(all.front().section, square_millimetres(1));
    EXPECT_EQ(all.back().metal, Metal::aluminium);
    for (std::size_t i = 1; i < all.size(); ++i) {
        if (all[i].metal == all[i - 1].metal) {
            EXPECT_LT(all[i - 1].section, all[i].section);
        }
    }
}

TEST(LoadCable, RefusesNumbersThatAreNone) {
    for (const char* bad : {"nan", "inf", "", "twelve", "12.1x"}) {
        EXPECT_TRUE(SpoiltTables()
                        .change("cable/conductor_resistance.csv", "copper,1.5,12.1,",
                                std::string("copper,1.5,") + bad + ",")
                        .refused("cable/conductor_resistance.csv:3", "not a number"))
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
    EXPECT_TRUE(SpoiltTables()
                    .change("cable/size.csv", "cpc_mm2", "cpc")
                    .refused("cable/size.csv", "no column cpc_mm2"));
}

TEST(LoadCable, RefusesWordsItDoesNotKnow) {
    EXPECT_TRUE(SpoiltTables()
                    .change("cable/rating.csv", ",2,1.5,C,", ",2,1.5,F,")
                    .refused("cable/rating.csv:2", "reference method"));
    EXPECT_TRUE(SpoiltTables()
                    .change("cable/rating.csv", ",2,1.5,C,", ",4,1.5,C,")
                    .refused("cable/rating.csv:2", "two or three cores"));
    EXPECT_TRUE(SpoiltTables()
                    .change("cable/size.csv", "flat twin and earth", "flat")
                    .refused("cable/size.csv", "flat is no family"));
    EXPECT_TRUE(SpoiltTables()
                    .change("cable/conductor_reactance.csv", "thermoplastic 70", "rubber")
                    .refused("cable/conductor_reactance.csv", "rubber is no insulation"));
    EXPECT_TRUE(SpoiltTables()
                    .change("cable/conductor_resistance.csv", "aluminium", "tin")
                    .refused("cable/conductor_resistance.csv", "tin is no metal"));
}

TEST(LoadCable, SaysWhichCableLacksWhichFigures) {
    EXPECT_TRUE(SpoiltTables()
                    .change("cable/armour_area.csv", "armoured XLPE copper,2,10,",
                            "armoured XLPE copper,2,11,")
                    .refused("cable/",
                             "incomplete for armoured XLPE copper 2 x 10 mm2: no section "
                             "of the armour"));
    EXPECT_TRUE(SpoiltTables()
                    .change("cable/voltage_drop.csv", "armoured PVC copper,3,10,",
                            "armoured PVC copper,3,12,")
                    .refused("cable/", "armoured PVC copper 4 x 10 mm2: no voltage drop with 3"));
    EXPECT_TRUE(SpoiltTables()
                    .change("cable/rating.csv", "flat twin and earth,2,4,101,",
                            "flat twin and earth,2,4,E,")
                    .refused("cable/", "flat twin and earth 2 x 4 mm2: no rating 101 with 2"));
    EXPECT_TRUE(
        SpoiltTables()
            .change("cable/size.csv", "flat twin and earth,2,4,1.5,", "flat twin and earth,2,4,3,")
            .refused("cable/", "flat twin and earth 2 x 4 mm2: no resistance of the cpc"));
}

TEST(LoadCable, RefusesARowAboutACableThatIsNotMade) {
    EXPECT_TRUE(SpoiltTables()
                    .change("cable/armour_area.csv", "armoured XLPE copper,2,10,",
                            "armoured XLPE copper,2,11,")
                    .refused("cable/armour_area.csv:6", "fits no cable"));
    EXPECT_TRUE(SpoiltTables()
                    .change("cable/rating.csv", "flat twin and earth,2,4,101,",
                            "flat twin and earth,3,4,101,")
                    .refused("cable/rating.csv", "fits no cable"));
}

TEST(LoadCable, RefusesAFamilyWithoutSizes) {
    EXPECT_TRUE(
        SpoiltTables()
            .change_all("cable/size.csv", "armoured XLPE aluminium", "unarmoured PVC copper")
            .refused("cable/size.csv", "no size of armoured XLPE aluminium"));
}

}  // namespace
}  // namespace toft::tables
