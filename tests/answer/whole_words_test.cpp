#include "answer/outline.h"

#include "solve/solve.h"
#include "support/trees.h"

#include <gtest/gtest.h>

namespace toft::answer {
namespace {

class WholeWords : public testing::Test {
protected:
    solve::Solution solved(const site::Job& job) const {
        return solve::solve({support::small_shop().catalogue, support::small_shop().book}, job);
    }
    Question about(const site::Job& job) const {
        return {support::small_shop().catalogue, support::small_shop().book, job};
    }

    site::Job job_ = support::tree_job({support::the_house, 0});
};

TEST_F(WholeWords, AFewRunsAreToldOneByOne) {
    job_.buildings[2].name = "Gym";
    const std::string words = whole_words(about(job_), solved(job_));
    EXPECT_EQ(words.rfind("2 runs: b0: ", 0), 0u) << words;
    EXPECT_NE(words.find("; Gym: "), std::string::npos) << words;
    EXPECT_EQ(whole_words(about(job_), {}), "");
}

TEST_F(WholeWords, OfManyOnlyTheirNumberIsSaid) {
    const site::Job many = support::tree_job({support::the_house, 0, 0, 0});
    EXPECT_EQ(whole_words(about(many), solved(many)), "4 runs, as toft design tells of each");
}

TEST_F(WholeWords, OnlyWhatIsBuiltOtherwiseIsTold) {
    const solve::Solution before = solved(job_);
    EXPECT_EQ(changed_words(about(job_), before, {before}), "built as it stands");
    EXPECT_EQ(changed_words(about(job_), before, {before, "as is hoped for"}),
              "built as is hoped for");
    site::Job heavier = job_;
    heavier.buildings[2].load = support::measured(amperes(14));
    heavier.runs[1].legs[0].length = support::measured(metres(90));
    const solve::Solution after = solved(heavier);
    ASSERT_NE(after.key, before.key);
    const std::string words = changed_words(about(heavier), after, {before});
    EXPECT_NE(words.find("b1: "), std::string::npos) << words;
}

TEST_F(WholeWords, AFactStandsAtABuildingOrOnTheWayToIt) {
    job_.buildings[2].name = "Gym";
    EXPECT_EQ(place_of_fact(job_, "/buildings/2/metalwork/0/bonded_at_house"), "Gym");
    EXPECT_EQ(place_of_fact(job_, "/runs/0/legs/1/length_m"), "on the way to b0, leg 2");
    EXPECT_EQ(place_of_fact(job_, "/runs/1/phases"), "on the way to Gym");
    EXPECT_EQ(place_of_fact(job_, "/intake/ze_ohm"), "");
    EXPECT_EQ(place_of_fact(job_, "/ground/layers/0/resistivity_ohm_m"), "");
}

}  // namespace
}  // namespace toft::answer
