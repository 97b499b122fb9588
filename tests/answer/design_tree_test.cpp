// The answer to a job of several runs.

#include "support/trees.h"

#include "answer/answer.h"

#include <gtest/gtest.h>

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

}  // namespace
}  // namespace toft::answer
