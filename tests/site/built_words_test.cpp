// What a job as built says of its runs.

#include "site/built_words.h"

#include "site/built.h"
#include "support/jobs.h"
#include "support/trees.h"

#include <gtest/gtest.h>

namespace toft::site {
namespace {

using support::the_house;

TEST(BuiltWords, EachRunIsNamedByWhereItStartsAndEnds) {
    Job job = support::tree_job({the_house, 0});
    EXPECT_EQ(fed_words(job), "b0 from the house, b1 from b0");
    job.buildings[1].name = "Garage";
    EXPECT_EQ(fed_words(job), "Garage from the house, b1 from Garage");
}

TEST(BuiltWords, RunsBetweenTheSameBuildingsAreToldApartByName) {
    Job job = support::tree_job({the_house});
    support::add_possible_run(job, the_house, 0);
    EXPECT_EQ(fed_words(job), "b0 from the house over r0, b0 from the house over r1");
}

TEST(BuiltWords, WhatIsLeftOutIsNamed) {
    Job job = support::tree_job({the_house});
    support::add_possible_run(job, the_house, 0);
    EXPECT_EQ(not_built(job, as_built(job, {1})), std::vector<std::string>{"r0"});
    EXPECT_TRUE(not_built(job, job).empty());
}

TEST(BuiltWords, ASharedTrenchIsPaidForByTheLongestInIt) {
    Job job = support::tree_job({the_house, the_house});
    for (site::Run& run : job.runs) run.legs[0].trench = "drive";
    job.runs[1].legs[0].length = support::measured(metres(30));
    const auto trenches = shared_trenches(as_built(job));
    ASSERT_EQ(trenches.size(), 1u);
    EXPECT_EQ(trenches[0].says(), "r0 shares the trench drive with r1, which pays for digging it");
    EXPECT_TRUE(shared_trenches(as_built(job, {1})).empty());
}

}  // namespace
}  // namespace toft::site
