#include "parts/cable_words.h"

#include <gtest/gtest.h>

namespace toft::parts {
namespace {

answer::CableAnswer cable(const char* family, int cores, double mm2, bool armoured) {
    answer::CableAnswer c;
    c.family = family;
    c.cores = cores;
    c.live_mm2 = mm2;
    c.armoured = armoured;
    return c;
}

TEST(CableWords, ArmourIsWhatTheAnswerSaysNotTheName) {
    EXPECT_EQ(build_of(cable("unarmoured XLPE copper", 5, 10, false)), Build::round);
    EXPECT_EQ(build_of(cable("armoured XLPE copper", 3, 10, true)), Build::armoured);
    EXPECT_EQ(build_of(cable("another name", 3, 10, true)), Build::armoured);
    EXPECT_EQ(build_of(cable("flat twin and earth", 2, 6, false)), Build::flat);
}

TEST(CableWords, SizesAndPairs) {
    answer::CableAnswer pair = cable("armoured XLPE aluminium", 4, 70, true);
    EXPECT_EQ(size_words(pair), "4-core 70 mm²");
    EXPECT_EQ(family_words(pair), "armoured XLPE aluminium cable");
    EXPECT_TRUE(aluminium(pair));
    pair.parallel = 2;
    EXPECT_EQ(size_words(pair), "two 4-core 70 mm²");
    EXPECT_EQ(family_words(pair), "armoured XLPE aluminium cables");
    answer::CableAnswer flat = cable("flat twin and earth", 2, 6, false);
    EXPECT_EQ(size_words(flat), "6 mm²");
    EXPECT_EQ(thin_core_words(flat), "");
    flat.cpc_mm2 = 2.5;
    EXPECT_EQ(thin_core_words(flat), "earth core 2.5 mm²");
    flat.cpc_mm2 = 6;
    EXPECT_EQ(thin_core_words(flat), "");
    EXPECT_FALSE(aluminium(flat));
}

TEST(CableWords, WhatServes) {
    answer::CableAnswer c = cable("armoured XLPE copper", 3, 10, true);
    const auto serves = [&](const char* words) {
        c.protective_conductor = words;
        return std::pair(core_serves(c), armour_serves(c));
    };
    EXPECT_EQ(serves("core and armour"), std::pair(true, true));
    EXPECT_EQ(serves("armour"), std::pair(false, true));
    EXPECT_EQ(serves("separate conductor"), std::pair(false, false));
    EXPECT_EQ(serves("armour and separate conductor"), std::pair(false, true));
}

TEST(CableWords, TheLongestStretchNamesTheRun) {
    answer::RunAnswer run;
    run.stretches.resize(3);
    run.stretches[0].length_m = 7;
    run.stretches[1].length_m = 22;
    run.stretches[2].length_m = 2;
    EXPECT_EQ(&longest_stretch(run), &run.stretches[1]);
}

}  // namespace
}  // namespace toft::parts
