#include "answer/levers.h"

#include "support/jobs.h"
#include "support/questions.h"
#include "support/trees.h"

#include <gtest/gtest.h>

namespace toft::answer {
namespace {

TEST(LeversAnswer, SaysTheChangeItsCostAndTheSchemeThen) {
    const site::Job job = support::example_job("demo", support::catalogue());
    const LeversAnswer a = levers(support::question_of(job));
    EXPECT_TRUE(a.sound);
    EXPECT_EQ(a.scheme_key, design(support::question_of(job)).schemes.front().key);
    ASSERT_FALSE(a.levers.empty());
    bool section = false;
    for (const LeverAnswer& l : a.levers) {
        EXPECT_FALSE(l.change.empty());
        EXPECT_FALSE(l.scheme.empty());
        EXPECT_FALSE(l.brings.empty()) << l.change;
        section = section || l.key == "plastic-section";
    }
    EXPECT_TRUE(section);
}

TEST(LeversAnswer, AJobWithoutALeverSaysHowManyWereTried) {
    site::Job job = support::plain_job();
    job.buildings[1].load = support::measured(amperes(6));
    const LeversAnswer a = levers(support::question_of(job));
    EXPECT_TRUE(a.levers.empty());
    EXPECT_GT(a.tried, 0u);
}

TEST(LeversAnswer, WhatHasNoPriceIsSaidToHaveNone) {
    site::Job job = support::plain_job();
    job.buildings[1].load = support::measured(amperes(10));
    job.intake.board.spare_ways = support::measured(0.0);
    const LeversAnswer a = levers(support::question_of(job));
    bool found = false;
    for (const LeverAnswer& l : a.levers) {
        if (l.key != "free-way") continue;
        found = true;
        EXPECT_FALSE(l.net.has_value());
        EXPECT_EQ(l.cost_says, "not priced: ask before you count on it");
        EXPECT_NE(l.brings.find("before what it costs"), std::string::npos);
    }
    EXPECT_TRUE(found);
}

TEST(LeversAnswer, OfSeveralRunsNamesThePlacesAndWhatIsBuiltOtherwise) {
    site::Job job = support::tree_job({support::the_house, 0, 0});
    for (site::Run& run : job.runs) run.legs[0].surface = site::Surface::drive;
    const Question question{support::small_shop().catalogue, support::small_shop().book, job};
    const LeversAnswer a = levers(question);
    EXPECT_TRUE(a.sound);
    EXPECT_TRUE(a.proved);
    EXPECT_EQ(a.scheme.rfind("3 runs: ", 0), 0u);
    EXPECT_EQ(a.scheme_key, design(question).schemes.front().key);
    for (const LeverAnswer& l : a.levers) {
        if (l.key != "soft-ground") continue;
        EXPECT_EQ(l.places, (std::vector<std::string>{"b0", "b1", "b2"}));
        ASSERT_EQ(l.singly.size(), 3u);
        EXPECT_GE(l.singly[0].second, l.singly[1].second);
        EXPECT_EQ(l.scheme, "built as it stands");
        return;
    }
    ADD_FAILURE() << "no lawn";
}

TEST(LeversAnswer, StoppedItSaysThatSomeWereNotTried) {
    const site::Job job = support::tree_job({support::the_house, 0});
    Question question{support::small_shop().catalogue, support::small_shop().book, job};
    const LeversAnswer whole = levers(question);
    EXPECT_FALSE(whole.stopped);
    question.told = [](long solved) { return solved < 2; };
    const LeversAnswer some = levers(question);
    EXPECT_TRUE(some.stopped);
    EXPECT_EQ(some.tried, 2u);
    EXPECT_LT(some.tried, whole.tried);
}

}  // namespace
}  // namespace toft::answer
