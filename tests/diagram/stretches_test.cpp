#include "diagram/stretches.h"

#include "diagram/sheet.h"

#include <gtest/gtest.h>

namespace toft::diagram {
namespace {

TEST(Stretches, TodaysRunIsOneStretchOfItsCable) {
    each_scheme([](const Example& one, const answer::SchemeAnswer& scheme) {
        const RunLine run = run_line(picture::set_stage(one.job, &scheme));
        ASSERT_EQ(run.stretches.size(), 1u);
        const Stretch& s = run.stretches[0];
        EXPECT_EQ(s.cores, scheme.run.cores);
        EXPECT_EQ(s.live_mm2, scheme.run.live_mm2);
        EXPECT_EQ(s.length_m, scheme.run.figures.length_m);
        EXPECT_EQ(s.legs.size(), one.job.runs[0].legs.size());
        EXPECT_EQ(cores_of(s).size(), static_cast<std::size_t>(scheme.run.cores));
        EXPECT_EQ(run.armour_near, scheme.run.armour_near);
        EXPECT_EQ(run.armour_far, scheme.run.armour_far);
    });
}

TEST(Stretches, CoresCountLinesFirst) {
    Stretch s;
    s.core_list = {{"black", "green-yellow", "protective"},
                   {"brown", "", "line 1"},
                   {"black", "", "line 2"},
                   {"grey", "", "line 3"},
                   {"blue", "", "neutral"}};
    const std::vector<Core> wanted{Core::line, Core::line, Core::line, Core::neutral,
                                   Core::protective};
    EXPECT_EQ(cores_of(s), wanted);
}

TEST(Stretches, WhatServes) {
    const auto line = [](const char* protective) {
        RunLine run;
        run.protective = protective;
        return run;
    };
    EXPECT_TRUE(line("core and armour").core_serves());
    EXPECT_TRUE(line("core and armour").armour_serves());
    EXPECT_FALSE(line("armour").core_serves());
    EXPECT_FALSE(line("separate conductor").armour_serves());
    EXPECT_TRUE(line("armour and separate conductor").armour_serves());
}

TEST(Stretches, OnlyAnArmouredFamilyHasArmour) {
    Stretch s;
    s.family = "armoured XLPE copper";
    EXPECT_TRUE(armoured(s));
    s.family = "unarmoured XLPE copper";
    EXPECT_FALSE(armoured(s));
}

}  // namespace
}  // namespace toft::diagram
