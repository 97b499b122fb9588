// Readings of a cable that is there, as figures.

#include "study/setting_parts.h"

#include "study/figures.h"
#include "support/catalogue.h"
#include "support/existing.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace toft::study {
namespace {

using support::measured;

site::Job cable_lies_there() {
    return support::with_cable_there(support::plain_job(), support::cable(2, 10));
}

double armour_per_metre() { return support::cable(2, 10).armour_r20.value.number(); }

/// Figures of the cable kept, its armour serving.
Figures<Silent> figures_of(const site::Job& job, Laid laid = Laid::kept) {
    const auto setting = support::prepared(job);
    auto s = support::scheme(support::cable(2, 10), Protective::armour, support::fuse(32));
    s.first().laid = laid;
    Silent silent;
    Figures<Silent> f;
    work_out(silent, setting, s, Stage::heat, f);
    return f;
}

TEST(Existing, OnlyACableThatFitsThePhasesIsThere) {
    const auto& all = support::catalogue();
    site::Run run = cable_lies_there().runs[0];
    EXPECT_EQ(cable_there(all, run, 1), &support::cable(2, 10));
    EXPECT_EQ(cable_there(all, run, 3), nullptr);
    run.existing.reset();
    EXPECT_EQ(cable_there(all, run, 1), nullptr);
}

TEST(Existing, AReadingAsComputedChangesNothing) {
    const auto kept = figures_of(cable_lies_there());
    const auto anew = figures_of(cable_lies_there(), Laid::anew);
    EXPECT_NEAR(kept.zs_far.number(), anew.zs_far.number(), 1e-12);
    EXPECT_NEAR(kept.drop.number(), anew.drop.number(), 1e-12);
    EXPECT_NEAR(kept.heat, anew.heat, 1e-12);
}

TEST(Existing, AWorseReadingComesOnTopOfTheLoopAndABetterOneIsNotBelieved) {
    site::Job job = cable_lies_there();
    site::Existing& e = *job.runs[0].existing;
    const double fit = e.r1_r2.low.number();
    const double computed = figures_of(job).r1_r2_cold.number();
    e.r1_r2 = measured(ohms(fit + 0.05));
    EXPECT_NEAR(figures_of(job).r1_r2_cold.number(), computed + 0.05, 1e-9);
    e.r1_r2 = measured(ohms(fit - 0.05));
    EXPECT_NEAR(figures_of(job).r1_r2_cold.number(), computed, 1e-9);
}

TEST(Existing, WhatLineAndNeutralReadTooMuchIsLostAsVoltage) {
    site::Job job = cable_lies_there();  // 20 A
    const double before = figures_of(job).drop.number();
    job.runs[0].existing->r1_rn = measured(ohms(2 * 1.83e-3 * 30 + 0.04));
    EXPECT_NEAR(figures_of(job).drop.number(), before + 20 * 0.04, 1e-9);
}

TEST(Existing, AZsReadingLessTheSupplysLoopIsTheRuns) {
    site::Job job = cable_lies_there();  // Ze 0.2 ohm
    site::Existing& e = *job.runs[0].existing;
    e.r1_r2 = {};
    e.zs = measured(ohms(0.5));
    EXPECT_NEAR(support::prepared(job).existing.loop.number(), 0.3, 1e-9);
}

TEST(Existing, AnArmourReadingTakesTheLineByItsLength) {
    site::Job job = cable_lies_there();
    site::Existing& e = *job.runs[0].existing;
    e.r1_r2 = {};
    e.armour = measured(ohms(30 * armour_per_metre() + 0.1));
    const auto setting = support::prepared(job);
    EXPECT_NEAR(setting.existing.loop.number(), 30 * (1.83e-3 + armour_per_metre()) + 0.1, 1e-9);
    EXPECT_NEAR(setting.existing.more_path.number(), 0.1, 1e-9);
}

TEST(Existing, WhatIsOpenIsNamed) {
    site::Job job = cable_lies_there();
    EXPECT_TRUE(support::prepared(job).open.empty());
    job.runs[0].existing->condition.reset();
    job.runs[0].existing->insulation = {};
    job.runs[0].existing->r1_r2 = {};
    std::vector<std::string> open;
    for (const OpenFact& fact : support::prepared(job).open) open.push_back(fact.pointer);
    EXPECT_EQ(open, (std::vector<std::string>{"/runs/0/existing/condition",
                                              "/runs/0/existing/insulation_megohm",
                                              "/runs/0/existing/r1_r2_ohm"}));
}

}  // namespace
}  // namespace toft::study
