// What an answer says of which building feeds which.

#include "answer/feeding.h"

#include "site/built.h"
#include "support/jobs.h"
#include "support/trees.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace toft::answer {
namespace {

using support::the_house;

/// b1 lies 60 m from the house and 20 m from b0.
site::Job choice() {
    site::Job job = support::tree_job({the_house, the_house});
    job.runs[1].legs[0].length = support::measured(metres(60));
    support::add_possible_run(job, 0, 1);
    return job;
}

class Feeds : public testing::Test {
protected:
    site::Job job_ = choice();
    Question question_{support::small_shop().catalogue, support::small_shop().book, job_};
    Answer answer_ = design(question_);
};

TEST_F(Feeds, SayWhichRunIsBuiltAndWhatTheOtherWouldCostMore) {
    ASSERT_TRUE(answer_.sound);
    EXPECT_TRUE(answer_.search.proved);
    ASSERT_EQ(answer_.feeds.size(), 1u);
    const FeedAnswer& feed = answer_.feeds[0];
    EXPECT_EQ(feed.building, "b1");
    EXPECT_EQ(feed.run, "r2");
    EXPECT_EQ(feed.from, "b0");
    ASSERT_EQ(feed.others.size(), 1u);
    ASSERT_TRUE(feed.others[0].more);
    EXPECT_GT(*feed.others[0].more, 0);
    EXPECT_NE(feed.says.find("b1 is fed from b0: from the house it would be £"), std::string::npos)
        << feed.says;
    const auto rank = static_cast<std::size_t>(feed.others[0].rank);
    ASSERT_GT(rank, 1u);
    EXPECT_NEAR(answer_.schemes[rank - 1].price.total - answer_.schemes[0].price.total,
                *feed.others[0].more, 1e-6);
    EXPECT_TRUE(part_of(answer_.schemes[rank - 1], "r1"));
}

TEST_F(Feeds, NameTheRunsThatAreNotBuilt) {
    const SchemeAnswer& first = answer_.schemes.front();
    EXPECT_EQ(first.not_built, std::vector<std::string>{"r1"});
    EXPECT_EQ(first.feeds, "b0 from the house, b1 from b0");
    EXPECT_FALSE(part_of(first, "r1"));
    EXPECT_TRUE(part_of(first, "r2"));
    EXPECT_NE(first.sentence.find(first.feeds), std::string::npos);
}

TEST_F(Feeds, TheJobAsBuiltIsDesignedTheSame) {
    const site::Job built = as_built(job_, answer_.schemes.front());
    EXPECT_EQ(built.runs.size(), 2u);
    const Answer again =
        design({support::small_shop().catalogue, support::small_shop().book, built});
    EXPECT_NEAR(again.schemes.front().price.total, answer_.schemes.front().price.total, 1e-9);
    EXPECT_TRUE(again.feeds.empty());
    EXPECT_TRUE(again.schemes.front().not_built.empty());
}

TEST_F(Feeds, FactsArePointedAtWhereTheUserStatedThem) {
    for (site::Run& run : job_.runs) {
        run.legs[0].length = {true, run.legs[0].length.low, metres(900), site::Standing::assumed};
    }
    const Answer open = design(question_);
    ASSERT_TRUE(only_conditional(open));
    const auto& hangs = open.schemes.front().conditional_on;
    EXPECT_NE(std::find(hangs.begin(), hangs.end(), "/runs/2/legs/0/length_m"), hangs.end());
    EXPECT_EQ(std::find(hangs.begin(), hangs.end(), "/runs/1/legs/0/length_m"), hangs.end());
}

TEST(FeedWords, RunsBetweenTheSameBuildingsAreToldApartByName) {
    site::Job job = support::tree_job({the_house});
    support::add_possible_run(job, the_house, 0);
    EXPECT_EQ(fed_words(job), "b0 from the house over r0, b0 from the house over r1");
}

TEST(FeedWords, ASharedTrenchIsPaidForByTheLongestInIt) {
    site::Job job = support::tree_job({the_house, the_house});
    for (site::Run& run : job.runs) run.legs[0].trench = "drive";
    job.runs[1].legs[0].length = support::measured(metres(30));
    const auto trenches = trenches_of(site::as_built(job));
    ASSERT_EQ(trenches.size(), 1u);
    EXPECT_EQ(trenches[0].says, "r0 shares the trench drive with r1, which pays for digging it");
}

}  // namespace
}  // namespace toft::answer
