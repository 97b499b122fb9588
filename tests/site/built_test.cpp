// A job with only the runs that are built.

#include "site/built.h"

#include "support/jobs.h"
#include "support/trees.h"

#include <gtest/gtest.h>

namespace toft::site {
namespace {

using support::the_house;

/// b0 and b1 each from the house; b1 also from b0. All runs may lie in one trench.
Job choice() {
    Job job = support::tree_job({the_house, the_house});
    support::add_possible_run(job, 0, 1);
    const double lengths[] = {20, 35, 12};
    for (std::size_t i = 0; i < 3; ++i) {
        job.runs[i].legs[0].length = support::measured(metres(lengths[i]));
        job.runs[i].legs[0].trench = "drive";
        job.runs[i].legs[0].other_loaded_circuits = {};
    }
    return job;
}

TEST(AsBuilt, ABuildingWithTwoRunsLeavesAChoice) {
    EXPECT_TRUE(has_choice(choice()));
    EXPECT_FALSE(has_choice(support::tree_job({the_house, 0, 0})));
    EXPECT_FALSE(has_choice(as_built(choice(), {0, 2})));
}

TEST(AsBuilt, RunsKeepTheirOrderAndTheirPlaceInTheJobAsStated) {
    const Job job = as_built(choice(), {2, 0});
    ASSERT_EQ(job.runs.size(), 2u);
    EXPECT_EQ(job.runs[1].id, "r2");
    EXPECT_EQ(run_pointer(job, 0), "/runs/0");
    EXPECT_EQ(run_pointer(job, 1), "/runs/2");
    EXPECT_EQ(run_pointer(choice(), 1), "/runs/1");
    EXPECT_EQ(run_pointer(as_built(job, {1}), 0), "/runs/2") << "built from what is built";
}

TEST(AsBuilt, ATrenchIsDugForTheLongestInIt) {
    const Job job = as_built(choice(), {0, 1});
    EXPECT_EQ(job.runs[0].legs[0].dug_for, "r1");
    EXPECT_EQ(job.runs[1].legs[0].dug_for, "");
}

TEST(AsBuilt, CablesInOneTrenchAreNeighboursUnlessTheSurveySaysHowManyThereAre) {
    Job job = choice();
    job.runs[1].legs[0].other_loaded_circuits = support::measured(3.0);
    const Job built = as_built(job, {0, 1});
    EXPECT_EQ(built.runs[0].legs[0].other_loaded_circuits.high, 1);
    EXPECT_EQ(built.runs[1].legs[0].other_loaded_circuits.high, 3);
}

TEST(AsBuilt, ARunAloneInItsTrenchIsAsOneThatNamesNone) {
    Job job = as_built(choice(), {0});
    EXPECT_EQ(job.runs[0].legs[0].trench, "");
    EXPECT_EQ(job.runs[0].legs[0].dug_for, "");
    EXPECT_FALSE(job.runs[0].legs[0].other_loaded_circuits.known);
}

TEST(AsBuilt, WhereNothingIsLeftToChooseAllRunsAreBuilt) {
    const Job job = support::tree_job({the_house, 0});
    EXPECT_EQ(as_built(job).runs.size(), 2u);
}

}  // namespace
}  // namespace toft::site
