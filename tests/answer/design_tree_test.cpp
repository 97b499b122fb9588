// The answer to a job of several runs.

#include "support/jobs.h"
#include "support/trees.h"

#include "answer/answer.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <set>

namespace toft::answer {
namespace {

class TreeAnswer : public testing::Test {
protected:
    site::Job job_ = support::tree_job({support::the_house, 0, 0});
    Question question_{support::small_shop().catalogue, support::small_shop().book, job_};
    Answer answer_ = design(question_);
};

TEST_F(TreeAnswer, EverySchemeHasAllRunsAndCostsTheirSum) {
    ASSERT_TRUE(answer_.sound);
    EXPECT_TRUE(answer_.search.proved);
    for (const SchemeAnswer& s : answer_.schemes) {
        ASSERT_EQ(s.further.size(), 2u);
        double sum = s.run_total;
        for (const SchemeAnswer& part : s.further) sum += part.run_total;
        EXPECT_NEAR(s.price.total, sum, 1e-6);
        EXPECT_NE(s.sentence.find("r2: "), std::string::npos);
    }
    EXPECT_NEAR(answer_.schemes.front().price.total, answer_.search.at_least, 1e-6);
}

TEST_F(TreeAnswer, OfARunThatIsFedFromABuildingItSaysSo) {
    const SchemeAnswer& s = answer_.schemes.front();
    EXPECT_EQ(s.run.feeder, "");
    for (const SchemeAnswer& part : s.further) {
        EXPECT_EQ(part.run.feeder, "b0");
        EXPECT_NE(part.sentence.find("board of b0"), std::string::npos) << part.sentence;
        EXPECT_GT(part.run.figures.voltage_drop_total_percent,
                  part.run.figures.voltage_drop_percent);
    }
}

TEST_F(TreeAnswer, OneRunOfItIsSeenAlone) {
    const Answer seen = for_run(answer_, "r1");
    ASSERT_EQ(seen.schemes.size(), answer_.schemes.size());
    EXPECT_EQ(seen.schemes.front().run.id, "r1");
    EXPECT_TRUE(seen.schemes.front().further.empty());
    EXPECT_TRUE(for_run(answer_, "none").schemes.empty());
    EXPECT_EQ(seen_from(job_, "r2").runs.front().id, "r2");
    EXPECT_EQ(for_run(answer_, "r0").schemes.front().sentence.find("r1: "), std::string::npos);
}

TEST_F(TreeAnswer, WhatGoesForSomeBuildingsOnlyNamesThem) {
    job_.buildings[2].livestock = site::Answer::yes;
    const Answer answer = design(question_);
    ASSERT_FALSE(answer.schemes.empty());
    const auto naming = [&](const std::vector<std::string>& lines, const char* words) {
        std::string found;
        for (const std::string& line : lines) {
            if (line.find(words) != std::string::npos) found += line + "\n";
        }
        return found;
    };
    const std::string animals = naming(answer.schemes.front().cautions, "animals feel");
    EXPECT_EQ(animals.find("b1: "), 0u) << animals;
    EXPECT_EQ(animals.find("b0"), std::string::npos) << animals;
    EXPECT_EQ(naming(answer.schemes.front().needs_a_person, "signs the design"),
              "a competent, licensed person signs the design and the tests\n");
    std::set<std::string> said;
    for (const special::Advice& advice : answer.advice) {
        EXPECT_TRUE(said.insert(advice.about + advice.says).second) << "twice: " << advice.about;
    }
}

TEST_F(TreeAnswer, OnThreePhasesEachRunOfOneNamesItsLineAndBuildingsShowTheirOwnPhases) {
    job_.intake.phases = 3;
    job_.runs[0].phases = 3;
    job_.runs[1].phases = 1;
    job_.runs[2].phases = 1;
    const Answer answer = design(question_);
    ASSERT_FALSE(answer.schemes.empty());
    const SchemeAnswer& s = answer.schemes.front();
    EXPECT_EQ(s.run.line, 0);
    ASSERT_EQ(s.further.size(), 2u);
    EXPECT_GT(s.further[0].run.line, 0);
    EXPECT_GT(s.further[1].run.line, 0);
    EXPECT_NE(s.further[0].run.line, s.further[1].run.line);
    EXPECT_NE(s.further[0].sentence.find("on L" + std::to_string(s.further[0].run.line)),
              std::string::npos);
    for (const BuildingDemandAnswer& b : answer.demand.buildings) {
        for (const LoadAnswer& load : b.scenarios) {
            EXPECT_EQ(load.lines_a.size(), b.id == "b0" ? 3u : 1u) << b.id;
        }
    }
}

TEST_F(TreeAnswer, StoppedItSaysSo) {
    question_.go_on = [](const Progress&) { return false; };
    const Answer nothing = design(question_);
    EXPECT_TRUE(nothing.search.stopped);
    EXPECT_FALSE(nothing.search.proved);
    EXPECT_TRUE(nothing.schemes.empty());
    EXPECT_TRUE(nothing.dropped.empty()) << "nothing fell: it was not looked at";
    bool others = false;
    question_.go_on = [&others](const Progress& p) {
        others = others || p.others;
        return !p.others;
    };
    const Answer cheapest = design(question_);
    ASSERT_TRUE(others);
    EXPECT_TRUE(cheapest.search.stopped);
    EXPECT_TRUE(cheapest.search.proved) << "only others were still looked for";
    ASSERT_FALSE(cheapest.schemes.empty());
    EXPECT_EQ(cheapest.schemes.front().key, answer_.schemes.front().key);
}

/// b1 lies 60 m from the house and 20 m from b0.
site::Job choice() {
    site::Job job = support::tree_job({support::the_house, support::the_house});
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
        run.legs[0].length = {true, metres(18), metres(22), site::Standing::assumed};
    }
    const site::Job built = as_built(job_, answer_.schemes.front());
    ASSERT_EQ(built.runs[1].id, "r2");
    Silent silent;
    const auto setting = study::prepare(silent, support::small_shop().catalogue, built,
                                        study::RunAt{1}, study::Corner{});
    std::vector<std::string> pointers;
    for (const study::OpenFact& fact : setting.open) pointers.push_back(fact.pointer);
    EXPECT_EQ(std::count(pointers.begin(), pointers.end(), "/runs/2/legs/0/length_m"), 1);
    EXPECT_EQ(std::count(pointers.begin(), pointers.end(), "/runs/1/legs/0/length_m"), 0);
}

}  // namespace
}  // namespace toft::answer
