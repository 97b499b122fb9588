// The job as the cheapest way builds it.

#include "answer/as_recommended.h"

#include "site/built.h"
#include "support/trees.h"

#include <gtest/gtest.h>

namespace toft::answer {
namespace {

Question asked(const site::Job& job) {
    return {support::small_shop().catalogue, support::small_shop().book, job};
}

TEST(AsRecommended, AJobOfOneRunStaysAsItIs) {
    const site::Job job = support::tree_job({support::the_house});
    EXPECT_EQ(as_recommended(asked(job)), job);
    EXPECT_EQ(feeding_taken(job, job), "");
}

TEST(AsRecommended, OfRunsToOneBuildingItHasThatOfTheCheapestWay) {
    site::Job job = support::tree_job({support::the_house, support::the_house});
    job.runs[1].legs[0].length.low = job.runs[1].legs[0].length.high = metres(60);
    support::add_possible_run(job, 0, 1);
    const site::Job built = as_recommended(asked(job));
    EXPECT_FALSE(site::has_choice(built));
    ASSERT_EQ(built.runs.size(), 2u);
    EXPECT_EQ(built.runs[1].id, "r2");
    EXPECT_EQ(built.runs[1].stated_at, std::size_t{2});
    EXPECT_NE(feeding_taken(job, built).find("b1 from b0"), std::string::npos);
    EXPECT_EQ(design(asked(built)).schemes.front().price.total,
              design(asked(job)).schemes.front().price.total);
}

TEST(AsRecommended, WhereNothingIsSoundEachBuildingStillHasOneRun) {
    site::Job job = support::tree_job({support::the_house, support::the_house});
    for (site::Run& run : job.runs) {
        run.legs[0].length.low = run.legs[0].length.high = metres(900);
    }
    support::add_possible_run(job, 0, 1);
    ASSERT_FALSE(design(asked(job)).sound);
    const site::Job built = as_recommended(asked(job));
    EXPECT_EQ(built.runs.size(), 2u);
    EXPECT_FALSE(site::has_choice(built));
}

}  // namespace
}  // namespace toft::answer
