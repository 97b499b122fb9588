#include "answer/why.h"

#include "support/catalogue.h"
#include "support/examples.h"

#include <gtest/gtest.h>

namespace toft::answer {
namespace {

TEST(Why, EveryExampleIsWalked) {
    for (const std::string& name : support::example_names()) {
        const site::Job job = support::example_job(name, support::catalogue());
        const auto walks = walks_of(support::catalogue(), job);
        ASSERT_EQ(walks.size(), job.runs.size()) << name;
        EXPECT_EQ(walks[0].building, job.runs[0].to) << name;
        EXPECT_EQ(citations_of(walks[0]).size(), walks[0].steps.size()) << name;
    }
}

TEST(Why, TheCaravanOnACombinedSupplyHasNoWayLeftAndIsToldWhy) {
    const site::Job job = support::example_job("caravan-no-scheme", support::catalogue());
    const walk::Walk w = walks_of(support::catalogue(), job).at(0);
    for (const walk::Way& way : w.ways) {
        EXPECT_EQ(way.standing, walk::Standing::ruled_out) << walk::choice_word(way.choice);
    }
    EXPECT_NE(w.conclusion.find("law forbids"), std::string::npos);
    EXPECT_NE(w.conclusion.find("insulating section"), std::string::npos);
}

TEST(Why, ThreeFactsLeaveEveryWayInDoubt) {
    const site::Job job = support::example_job("three-facts", support::catalogue());
    const walk::Walk w = walks_of(support::catalogue(), job).at(0);
    for (const walk::Way& way : w.ways) {
        EXPECT_GE(way.standing, walk::Standing::judgement) << walk::choice_word(way.choice);
    }
    EXPECT_NE(w.conclusion.find("To be found out: what the building is"), std::string::npos);
}

}  // namespace
}  // namespace toft::answer
