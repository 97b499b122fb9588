// What of the open facts of several runs is worth finding out, in words.

#include "answer/unknowns.h"

#include "support/jobs.h"
#include "support/trees.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace toft::answer {
namespace {

using support::between;

/// Two buildings in a row whose runs are of a length not yet measured.
site::Job two_lengths() {
    site::Job job = support::tree_job({support::the_house, 0});
    job.buildings[1].name = "Barn";
    job.buildings[2].name = "Gym";
    for (site::Run& run : job.runs) run.legs[0].length = between(metres(30), metres(60));
    return job;
}

Question about(const site::Job& job) {
    return {support::small_shop().catalogue, support::small_shop().book, job};
}

TEST(UnknownsTree, FactsOfAllRunsAreAskedForByTheNameOfTheirPlace) {
    const site::Job job = two_lengths();
    const AskAnswer a = ask(about(job));
    EXPECT_TRUE(a.sound);
    EXPECT_TRUE(a.proved);
    ASSERT_EQ(a.unknowns.size(), 2u);
    for (const UnknownAnswer& u : a.unknowns) {
        EXPECT_TRUE(u.ask) << u.fact;
        EXPECT_EQ(u.says.rfind(u.place + ": ", 0), 0u) << u.says;
        EXPECT_EQ(u.place.rfind("on the way to ", 0), 0u) << u.place;
        ASSERT_TRUE(u.saves_alike.has_value());
        EXPECT_GT(*u.saves_alike, *u.saves);
    }
}

TEST(UnknownsTree, WhatIsSavedWithTheSameKnownEverywhereIsWhatTheJobThenCosts) {
    site::Job job = two_lengths();
    const AskAnswer before = ask(about(job));
    const double saves = *before.unknowns.front().saves_alike;
    for (site::Run& run : job.runs) run.legs[0].length = support::measured(metres(30));
    EXPECT_NEAR(before.total - ask(about(job)).total, saves, 1e-6);
}

TEST(UnknownsTree, OfAJobThatStandsOnlyOnConditionsThatIsSaid) {
    site::Job job = support::tree_job({support::the_house, 0});
    job.runs[1].legs[0].length = between(metres(20), metres(2000));
    const AskAnswer a = ask(about(job));
    EXPECT_FALSE(a.sound);
    EXPECT_TRUE(a.conditional);
    ASSERT_FALSE(a.unknowns.empty());
    EXPECT_EQ(a.unknowns.front().fact, "/runs/1/legs/0/length_m");
    EXPECT_EQ(a.unknowns.front().effect, "decides");
    EXPECT_NE(a.unknowns.front().hangs.find("nothing is sound"), std::string::npos);
}

TEST(UnknownsTree, ADesignListsOpenFactsWhereNoneMattersAndElseSaysWhoDoes) {
    site::Job job = two_lengths();
    const auto says = [](const Answer& a, const char* words) {
        return std::any_of(a.assumed.begin(), a.assumed.end(), [&](const std::string& line) {
            return line.find(words) != std::string::npos;
        });
    };
    const Answer open = design(about(job));
    EXPECT_TRUE(open.unknowns.empty());
    EXPECT_TRUE(says(open, "toft ask says which of it"));
    for (site::Run& run : job.runs) run.legs[0].length = support::measured(metres(30));
    job.intake.supply_neutral = {};
    const Answer idle = design(about(job));
    ASSERT_EQ(idle.unknowns.size(), 1u);
    EXPECT_EQ(idle.unknowns.front().effect, "does not matter");
    EXPECT_FALSE(says(idle, "toft ask"));
    job.intake.supply_neutral = support::measured(square_millimetres(25));
    EXPECT_FALSE(says(design(about(job)), "what the survey leaves open"));
}

}  // namespace
}  // namespace toft::answer
