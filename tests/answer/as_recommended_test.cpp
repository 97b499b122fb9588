// The job as the cheapest way builds it.

#include "answer/as_recommended.h"

#include "answer/unknowns.h"

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

TEST(AsRecommended, FactsOfTheRunBuiltAreAskedForByTheBuildingItFeeds) {
    site::Job job = support::tree_job({support::the_house, support::the_house});
    job.runs[1].legs[0].length.low = job.runs[1].legs[0].length.high = metres(60);
    support::add_possible_run(job, 0, 1);
    for (site::Run& run : job.runs) {
        site::Fact<Metres>& length = run.legs[0].length;
        length.low = length.low * 0.5;
        length.standing = site::Standing::assumed;
    }
    const AskAnswer asked_for = ask(asked(job));
    bool seen = false;
    for (const UnknownAnswer& u : asked_for.unknowns) {
        if (u.fact.rfind("/runs/2/", 0) != 0) continue;
        seen = true;
        EXPECT_NE(u.place.find("b1"), std::string::npos) << u.place;
    }
    EXPECT_TRUE(seen);
}

TEST(AsRecommended, WhatIsFoundAtARunThatIsNotBuiltIsStillTold) {
    site::Job job = support::tree_job({support::the_house, support::the_house});
    job.runs[1].legs[0].length.low = job.runs[1].legs[0].length.high = metres(60);
    support::add_possible_run(job, 0, 1);
    job.runs[1].found = {"flat cable in the ground"};
    const Answer answer = design(asked(job));
    ASSERT_FALSE(answer.schemes.empty());
    ASSERT_EQ(answer.schemes.front().not_built, std::vector<std::string>{"r1"});
    bool told = false;
    for (const std::string& caution : answer.schemes.front().cautions) {
        told = told ||
               caution.find("r1, which is not built: flat twin and earth") != std::string::npos;
    }
    EXPECT_TRUE(told);
}

TEST(AsRecommended, StoppedWhatWasNotLookedAtIsWorthFindingOut) {
    site::Job job = support::tree_job({support::the_house, 0});
    for (site::Run& run : job.runs) {
        run.legs[0].length.low = run.legs[0].length.low * 0.3;
        run.legs[0].length.standing = site::Standing::assumed;
    }
    Question question = asked(job);
    question.told = [](long solved) { return solved < 1; };
    const AskAnswer stopped = ask(question);
    EXPECT_TRUE(stopped.stopped);
    ASSERT_FALSE(stopped.unknowns.empty());
    for (const UnknownAnswer& u : stopped.unknowns) {
        EXPECT_EQ(u.effect, "not looked at");
        EXPECT_TRUE(u.ask);
    }
    const AskAnswer whole = ask(asked(job));
    EXPECT_FALSE(whole.stopped);
    EXPECT_EQ(whole.unknowns.size(), stopped.unknowns.size());
}

}  // namespace
}  // namespace toft::answer
