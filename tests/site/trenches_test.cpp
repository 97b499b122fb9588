// Legs that share a trench.

#include "site/trenches.h"

#include "support/jobs.h"
#include "support/trees.h"

#include <gtest/gtest.h>

namespace toft::site {
namespace {

using support::the_house;

/// Runs from the house to so many buildings, all in one trench.
Job star(std::size_t count) {
    Job job = support::tree_job(std::vector<int>(count, the_house));
    for (Run& run : job.runs) run.legs[0].trench = "drive";
    return job;
}

void expect_only(const Job& job, const std::string& pointer) {
    const Faults faults = faults_in_trenches(job);
    ASSERT_EQ(faults.size(), 1u);
    EXPECT_EQ(faults[0].code, "trench");
    EXPECT_EQ(faults[0].pointer, pointer);
}

TEST(Trenches, RunsMayShareOne) { EXPECT_TRUE(faults_in_trenches(star(3)).empty()); }

TEST(Trenches, WhatIsClippedLiesInNone) {
    Job job = star(2);
    job.runs[1].legs[0].method = LegMethod::clipped;
    expect_only(job, "/runs/1/legs/0/trench");
}

TEST(Trenches, ARunLiesInATrenchOnce) {
    Job job = star(2);
    job.runs[1].legs.push_back(job.runs[1].legs[0]);
    expect_only(job, "/runs/1/legs/1/trench");
}

TEST(Trenches, ATrenchHasOneSurface) {
    Job job = star(2);
    job.runs[0].legs[0].surface = Surface::lawn;
    job.runs[1].legs[0].surface = Surface::drive;
    expect_only(job, "/runs/1/legs/0/surface");
}

TEST(Trenches, NoMoreCablesLieInOneThanGroupingIsTabulatedFor) {
    EXPECT_TRUE(faults_in_trenches(star(6)).empty());
    expect_only(star(7), "/runs/6/legs/0/trench");
    Job job = star(6);
    support::add_possible_run(job, 0, 1);
    job.runs.back().legs[0].trench = "drive";
    EXPECT_TRUE(faults_in_trenches(job).empty()) << "one run to each building is built";
}

}  // namespace
}  // namespace toft::site
