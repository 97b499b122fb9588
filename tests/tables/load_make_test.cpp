#include "support/catalogue.h"
#include "support/spoilt_tables.h"

#include <gtest/gtest.h>

namespace toft::tables {
namespace {

using support::make;
using support::SpoiltTables;

std::optional<ReferenceMethod> method(Family family, Laying laying) {
    return make(family).method[static_cast<std::size_t>(laying)];
}

TEST(LoadMake, ConstructionReadsAsItStands) {
    const Make& aluminium = make(Family::armoured_xlpe_aluminium);
    EXPECT_EQ(aluminium.family, Family::armoured_xlpe_aluminium);
    EXPECT_EQ(aluminium.standard, "BS 5467");
    EXPECT_EQ(aluminium.metal, Metal::aluminium);
    EXPECT_EQ(aluminium.insulation, Insulation::thermosetting_90);
    EXPECT_TRUE(aluminium.armoured);
    const Make& flat = make(Family::flat_twin_and_earth);
    EXPECT_EQ(flat.standard, "BS 6004");
    EXPECT_EQ(flat.insulation, Insulation::thermoplastic_70);
    EXPECT_FALSE(flat.armoured);
    EXPECT_FALSE(flat.insulation_factor);
    EXPECT_TRUE(make(Family::unarmoured_pvc_copper).insulation_factor);
}

TEST(LoadMake, HeatLimitsGoByMetalAndInsulation) {
    const Make& xlpe = make(Family::armoured_xlpe_copper);
    EXPECT_EQ(xlpe.live.k.value, heat_constant(143));
    EXPECT_EQ(xlpe.armour.k.value, heat_constant(46));
    EXPECT_EQ(xlpe.armour.initial.value, celsius(80));
    const Make& pvc = make(Family::armoured_pvc_copper);
    EXPECT_EQ(pvc.live.k.value, heat_constant(115));
    EXPECT_EQ(pvc.armour.k.value, heat_constant(51));
    EXPECT_EQ(pvc.armour.initial.value, celsius(60));
    EXPECT_EQ(make(Family::armoured_xlpe_aluminium).live.k.value, heat_constant(94));
    EXPECT_EQ(make(Family::armoured_xlpe_aluminium).armour.k.value, heat_constant(46));
    EXPECT_EQ(make(Family::flat_twin_and_earth).core.k.value, heat_constant(115));
    EXPECT_EQ(make(Family::flat_twin_and_earth).armour.k.citation, nullptr);
}

TEST(LoadMake, ALayingIsServedByTheMethodOfItsRow) {
    EXPECT_EQ(method(Family::armoured_xlpe_copper, Laying::clipped), ReferenceMethod::c);
    EXPECT_EQ(method(Family::armoured_pvc_copper, Laying::duct), ReferenceMethod::d);
    EXPECT_EQ(method(Family::armoured_xlpe_aluminium, Laying::overhead), ReferenceMethod::e);
    EXPECT_EQ(method(Family::flat_twin_and_earth, Laying::above_ceiling), ReferenceMethod::m101);
    EXPECT_EQ(method(Family::flat_twin_and_earth, Laying::insulated), ReferenceMethod::m103);
    EXPECT_EQ(method(Family::unarmoured_xlpe_copper, Laying::conduit), ReferenceMethod::b);
}

TEST(LoadMake, ALayingWithoutARowIsServedByNone) {
    for (const Laying laying : {Laying::conduit, Laying::trunking, Laying::above_ceiling}) {
        EXPECT_FALSE(method(Family::armoured_xlpe_copper, laying));
    }
    for (const Family family : {Family::flat_twin_and_earth, Family::unarmoured_xlpe_copper,
                                Family::unarmoured_pvc_copper}) {
        for (const Laying laying : {Laying::direct, Laying::duct, Laying::overhead}) {
            EXPECT_FALSE(method(family, laying)) << family_word(family);
        }
    }
}

TEST(LoadMake, EveryLayingThatIsServedSaysWhereThatStands) {
    for (const Make& m : support::catalogue().makes) {
        ASSERT_NE(m.listed, nullptr);
        for (std::size_t i = 0; i < layings; ++i) {
            EXPECT_EQ(m.method[i].has_value(), m.method_from[i] != nullptr);
        }
    }
}

TEST(LoadMake, AmbientFactorsFallAndGoByInsulation) {
    for (const Make& m : support::catalogue().makes) {
        for (const auto* list : {&m.ambient_air, &m.ambient_ground}) {
            ASSERT_GE(list->size(), 2u);
            for (std::size_t i = 1; i < list->size(); ++i) {
                EXPECT_LT((*list)[i - 1].x, (*list)[i].x);
                EXPECT_GT((*list)[i - 1].y.value, (*list)[i].y.value);
            }
        }
    }
    EXPECT_EQ(make(Family::flat_twin_and_earth).ambient_air.back().x, 60);
    EXPECT_EQ(make(Family::unarmoured_xlpe_copper).ambient_air.back().x, 85);
}

TEST(LoadMake, RefusesWordsItDoesNotKnow) {
    struct Spoilt {
        const char* file;
        const char* from;
        const char* to;
        const char* says;
    };
    for (const Spoilt& s :
         {Spoilt{"cable/family.csv", "armoured PVC copper,", "armoured rubber,", "no family"},
          Spoilt{"cable/family.csv", ",aluminium,", ",tin,", "tin is no metal"},
          Spoilt{"cable/family.csv", "thermoplastic 70", "rubber", "rubber is no insulation"},
          Spoilt{"cable/family.csv", ",yes,", ",perhaps,", "neither yes nor no"},
          Spoilt{"cable/method.csv", "flat twin and earth,", "flat,", "flat is no family"},
          Spoilt{"cable/method.csv", ",clipped,", ",nailed,", "nailed is no laying"},
          Spoilt{"cable/method.csv", ",clipped,C", ",clipped,F", "F is no method"},
          Spoilt{"cable/fault_k.csv", "live,copper", "dead,copper", "dead is no use"},
          Spoilt{"cable/factor_ambient.csv", "air,", "water,", "water is no place"},
          Spoilt{"cable/factor_ambient.csv", "thermosetting 90", "rubber", "no insulation"}}) {
        EXPECT_TRUE(SpoiltTables().change(s.file, s.from, s.to).refused(s.file, s.says)) << s.to;
    }
}

TEST(LoadMake, SaysWhichFamilyLacksWhat) {
    EXPECT_TRUE(SpoiltTables()
                    .change("cable/family.csv", "armoured PVC copper", "armoured XLPE copper")
                    .refused("cable/family.csv", "armoured PVC copper has no row"));
    EXPECT_TRUE(SpoiltTables()
                    .change("cable/fault_k.csv", "live,aluminium", "core,aluminium")
                    .refused("cable/fault_k.csv", "armoured XLPE aluminium has no k of a live"));
    EXPECT_TRUE(SpoiltTables()
                    .change("cable/fault_k.csv", "armour,steel,thermoplastic 70",
                            "armour,steel,thermosetting 90")
                    .refused("cable/fault_k.csv", "armoured PVC copper has no k of the armour"));
    EXPECT_TRUE(
        SpoiltTables()
            .change_all("cable/factor_ambient.csv", "ground,thermoplastic 70",
                        "air,thermoplastic 70")
            .refused("cable/factor_ambient.csv", "flat twin and earth has no factors for ground"));
    EXPECT_TRUE(SpoiltTables()
                    .change_all("cable/method.csv", "flat twin and earth", "unarmoured PVC copper")
                    .refused("cable/method.csv", "flat twin and earth has no laying"));
}

}  // namespace
}  // namespace toft::tables
