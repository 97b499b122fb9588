// What a run carries with the buildings fed through it: lines reckoned by hand.

#include "study/path_load.h"

#include "support/jobs.h"
#include "support/trees.h"

#include <gtest/gtest.h>

#include <cmath>

namespace toft::study {
namespace {

using support::measured;
using support::the_house;

/// The setting of that run, and what it carries.
PathLoad<Silent> carried(const site::Job& job, std::size_t run) {
    Silent silent;
    const auto setting = prepare(silent, support::small_shop().catalogue, job,
                                 RunAt{run, phases_in_tree(job, run)}, {});
    return path_load(silent, setting);
}

double amps(Amperes i) { return i.number(); }

/// Three lines to a barn that draws 10 A on each, and from its board three sheds of one line each.
site::Job barn_with_sheds() {
    site::Job job = support::tree_job({the_house, 0, 0, 0});
    job.intake.phases = 3;
    job.runs[0].phases = 3;
    job.buildings[1].load = {};
    job.buildings[1].load_w = measured(3 * 230 * 10.0);
    const double draws[] = {5, 8, 6};
    for (std::size_t i = 1; i < 4; ++i) {
        job.runs[i].phases = 1;
        job.buildings[i + 1].load = measured(amperes(draws[i - 1]));
    }
    return job;
}

TEST(PathLoad, ALastBuildingCarriesOnlyItself) {
    const site::Job job = support::tree_job({the_house, 0});
    const auto last = carried(job, 1);
    EXPECT_FALSE(last.fed_through);
    EXPECT_DOUBLE_EQ(amps(last.load.total), 8);
}

TEST(PathLoad, OnOneLineAllBuildingsBehindAddUp) {
    site::Job job = support::tree_job({the_house, 0, 1, 0});
    job.buildings[4].load = measured(amperes(3));
    const auto first = carried(job, 0);
    EXPECT_TRUE(first.fed_through);
    EXPECT_DOUBLE_EQ(amps(first.load.total), 8 + 8 + 8 + 3);
    EXPECT_DOUBLE_EQ(amps(first.load.neutral), 27);
    EXPECT_DOUBLE_EQ(amps(carried(job, 1).load.total), 16);
}

TEST(PathLoad, SingleLineRunsGoToTheLeastLoadedLineTheLargestFirst) {
    const auto barn = carried(barn_with_sheds(), 0);
    EXPECT_DOUBLE_EQ(amps(barn.load.lines.each[0]), 18);
    EXPECT_DOUBLE_EQ(amps(barn.load.lines.each[1]), 16);
    EXPECT_DOUBLE_EQ(amps(barn.load.lines.each[2]), 15);
    EXPECT_DOUBLE_EQ(amps(barn.load.total), 18);
    EXPECT_DOUBLE_EQ(amps(barn.load.heaviest), 18);
    // 8, 6 and 5 A, 120 degrees apart: 64 + 36 + 25 - 48 - 30 - 40 = 7.
    EXPECT_NEAR(amps(barn.load.neutral), std::sqrt(7.0), 1e-9);
}

TEST(PathLoad, ASmallerShedMoreEvensTheLines) {
    site::Job job = support::tree_job({the_house, 0, 0, 0, 0});
    const site::Job barn = barn_with_sheds();
    job.intake.phases = 3;
    for (std::size_t i = 0; i < 4; ++i) {
        job.runs[i].phases = barn.runs[i].phases;
        job.buildings[i + 1] = barn.buildings[i + 1];
    }
    job.runs[4].phases = 1;
    job.buildings[5].load = measured(amperes(2));
    const auto all = carried(job, 0);
    EXPECT_DOUBLE_EQ(amps(all.load.lines.each[2]), 17);
    EXPECT_DOUBLE_EQ(amps(all.load.total), 18);
    EXPECT_LT(amps(all.load.neutral), std::sqrt(7.0));
}

TEST(PathLoad, WhereThirdHarmonicsAreStatedAllNeutralsAddUp) {
    site::Job job = barn_with_sheds();
    site::Building& shed = job.buildings[2];
    shed.load = {};
    shed.power_factor = {};
    site::Circuit drive;
    drive.name = "drive";
    drive.kind = site::CircuitKind::kiln;  // counts whole
    drive.load_w = measured(230 * 5.0);
    drive.power_factor = measured(1.0);
    drive.third_harmonic = measured(30.0);
    shed.circuits = {drive};
    const auto barn = carried(job, 0);
    const double shed_neutral = amps(carried(job, 1).load.neutral);
    EXPECT_GE(shed_neutral, 5);
    EXPECT_NEAR(amps(barn.load.neutral), 0 + shed_neutral + 8 + 6, 1e-9);
}

TEST(PathLoad, WhatIsPlannedForLaterCountsInTheScenarioThatAsksForIt) {
    site::Job job = support::tree_job({the_house, 0});
    site::Building& shed = job.buildings[2];
    shed.load = {};
    shed.power_factor = {};
    site::Circuit kiln;
    kiln.name = "kiln";
    kiln.kind = site::CircuitKind::kiln;
    kiln.load_w = measured(2300.0);
    kiln.power_factor = measured(1.0);
    site::Circuit second = kiln;
    second.later = site::Answer::yes;
    shed.circuits = {kiln, second};
    job.wishes.scenario = site::Scenario::today;
    EXPECT_NEAR(amps(carried(job, 0).load.total), 8 + 10, 1e-9);
    job.wishes.scenario = site::Scenario::everything;
    EXPECT_NEAR(amps(carried(job, 0).load.total), 8 + 20, 1e-9);
}

TEST(PathLoad, TheHouseFeedsAllRunsThatLeaveItTogether) {
    site::Job job = support::tree_job({the_house, 0, the_house});
    Silent silent;
    const auto setting = prepare(silent, support::small_shop().catalogue, job, RunAt{0, 1}, {});
    EXPECT_DOUBLE_EQ(amps(load_of_all_runs(silent, setting)), 24);
    EXPECT_TRUE(setting.others_beside);
    EXPECT_DOUBLE_EQ(amps(setting.beside), 8);
    EXPECT_DOUBLE_EQ(amps(setting.ib), 16);
}

TEST(PathLoad, ARunTakesThreeLinesWhereSomethingBehindItNeedsThem) {
    site::Job job = support::tree_job({the_house, 0, 0});
    job.intake.phases = 3;
    EXPECT_EQ(phases_in_tree(job, 0), 1);
    site::Circuit lathe;
    lathe.phases = 3;
    job.buildings[2].circuits = {lathe};
    EXPECT_EQ(phases_in_tree(job, 0), 3);
    EXPECT_EQ(phases_in_tree(job, 1), 3);
    EXPECT_EQ(phases_in_tree(job, 2), 1);
    job.buildings[2].circuits.clear();
    job.runs[2].phases = 3;
    EXPECT_EQ(phases_in_tree(job, 0), 3);
    EXPECT_EQ(phases_in_tree(job, 1), 1);
    job.intake.phases = 1;
    EXPECT_EQ(phases_in_tree(job, 0), 1);
}

/// Lines that the runs take.
std::vector<int> lines_in(const site::Job& job) {
    Silent silent;
    return lines_of_runs(prepare(silent, support::small_shop().catalogue, job,
                                 RunAt{0, phases_in_tree(job, 0)}, {}));
}

TEST(PathLoad, WhichLineARunTakesIsThatWhichItIsReckonedOn) {
    // 10 A on each line of the barn; 8, 6 and 5 A go to one line each, the largest first.
    EXPECT_EQ(lines_in(barn_with_sheds()), (std::vector<int>{0, 3, 1, 2}));
    site::Job none = support::tree_job({the_house, 0});
    EXPECT_EQ(lines_in(none), (std::vector<int>{0, 0})) << "the intake has one line";
}

TEST(PathLoad, ThreeAlikeFromTheHouseTakeALineEachAndWhatIsBehindOneKeepsIt) {
    site::Job job = support::tree_job({the_house, the_house, the_house, 1, 3});
    job.intake.phases = 3;
    for (site::Run& run : job.runs) run.phases = 1;
    job.buildings[1].load = measured(amperes(9));
    job.buildings[3].load = measured(amperes(7));
    // Behind the second hang two more: it is the heaviest and takes the first line.
    EXPECT_EQ(lines_in(job), (std::vector<int>{2, 1, 3, 1, 1}));
}

}  // namespace
}  // namespace toft::study
