#include "tables/cable.h"

#include <gtest/gtest.h>

#include <set>

namespace toft::tables {
namespace {

TEST(CableWords, EveryWordMeansWhatItWasWrittenFor) {
    for (std::size_t i = 0; i < families; ++i) {
        EXPECT_EQ(family_of(family_word(static_cast<Family>(i))), static_cast<Family>(i));
    }
    for (std::size_t i = 0; i < layings; ++i) {
        EXPECT_EQ(laying_of(laying_word(static_cast<Laying>(i))), static_cast<Laying>(i));
    }
    for (std::size_t i = 0; i < reference_methods; ++i) {
        const auto method = static_cast<ReferenceMethod>(i);
        EXPECT_EQ(method_of(method_word(method)), method);
    }
    for (const Metal metal : {Metal::copper, Metal::aluminium, Metal::steel}) {
        EXPECT_EQ(metal_of(metal_word(metal)), metal);
    }
    for (const auto insulation : {Insulation::thermoplastic_70, Insulation::thermosetting_90}) {
        EXPECT_EQ(insulation_of(insulation_word(insulation)), insulation);
    }
}

TEST(CableWords, ReadAsTheTradeWritesThem) {
    EXPECT_STREQ(family_word(Family::flat_twin_and_earth), "flat twin and earth");
    EXPECT_STREQ(laying_word(Laying::free_air), "free air");
    EXPECT_STREQ(laying_word(Laying::overhead), "overhead");
    EXPECT_STREQ(method_word(ReferenceMethod::d), "D");
    EXPECT_STREQ(method_word(ReferenceMethod::m103), "103");
    EXPECT_STREQ(metal_word(Metal::aluminium), "aluminium");
}

TEST(CableWords, WhatTheTablesDoNotKnowMeansNothing) {
    EXPECT_FALSE(family_of("armoured"));
    EXPECT_FALSE(metal_of("Copper"));
    EXPECT_FALSE(insulation_of("thermosetting"));
    EXPECT_FALSE(laying_of(""));
    EXPECT_FALSE(method_of("F"));
}

TEST(Cable, OnlyTwoLayingsAreInTheGround) {
    std::set<Laying> ground;
    for (std::size_t i = 0; i < layings; ++i) {
        if (in_ground(static_cast<Laying>(i))) ground.insert(static_cast<Laying>(i));
    }
    EXPECT_EQ(ground, (std::set<Laying>{Laying::direct, Laying::duct}));
}

TEST(Cable, GivesTheDutyOfSoManyPhases) {
    Cable cable;
    cable.two.drop_r.value = ohms_per_metre(2);
    cable.three.drop_r.value = ohms_per_metre(3);
    EXPECT_EQ(cable.duty(1).drop_r.value, ohms_per_metre(2));
    EXPECT_EQ(cable.duty(3).drop_r.value, ohms_per_metre(3));
}

TEST(CableConstants, GiveEachMetalItsOwn) {
    CableConstants c;
    c.copper.big_k.value = 1;
    c.aluminium.big_k.value = 2;
    c.steel.big_k.value = 3;
    EXPECT_EQ(c.material(Metal::copper).big_k.value, 1);
    EXPECT_EQ(c.material(Metal::aluminium).big_k.value, 2);
    EXPECT_EQ(c.material(Metal::steel).big_k.value, 3);
}

}  // namespace
}  // namespace toft::tables
