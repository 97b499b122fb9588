// Which way, and which run of it, is meant.

#include "request/picked.h"

#include "support/questions.h"
#include "support/trees.h"

#include <gtest/gtest.h>

namespace toft::request {
namespace {

TEST(Picked, ARankIsAFigureAndAKeyIsNot) {
    EXPECT_TRUE(rank_like("1"));
    EXPECT_TRUE(rank_like("24"));
    EXPECT_FALSE(rank_like(""));
    EXPECT_FALSE(rank_like("123456"));
    EXPECT_FALSE(rank_like("own-rod/2x6"));
}

TEST(Picked, ByNothingByRankAndByKey) {
    const site::Job job = support::example_job("tt-shed", support::catalogue());
    const answer::Question question = support::question_of(job);
    const answer::Answer whole = answer::design(question);
    ASSERT_GT(whole.schemes.size(), 1u);
    bool left_out = true;
    const auto first = pick(question, "", "", left_out);
    ASSERT_TRUE(first);
    EXPECT_FALSE(left_out);
    EXPECT_EQ(study::scheme_key(first->scheme), whole.schemes.front().key);
    const auto second = pick(question, "2", "", left_out);
    ASSERT_TRUE(second);
    EXPECT_EQ(study::scheme_key(second->scheme), whole.schemes[1].key);
    const auto same = pick(question, whole.schemes[1].key, "", left_out);
    ASSERT_TRUE(same);
    EXPECT_EQ(study::scheme_key(same->scheme), whole.schemes[1].key);
    EXPECT_FALSE(pick(question, "999", "", left_out));
    EXPECT_FALSE(pick(question, "no-such-scheme", "", left_out));
}

TEST(Picked, OfSeveralRunsItComesWithWhatStandsBeforeIt) {
    const site::Job job = support::tree_job({support::the_house, 0});
    const answer::Question question{support::small_shop().catalogue, support::small_shop().book,
                                    job};
    bool left_out = false;
    const auto picked = pick(question, "", "r1", left_out);
    ASSERT_TRUE(picked);
    EXPECT_EQ(picked->job.runs[picked->run].id, "r1");
    EXPECT_TRUE(picked->incoming);
    EXPECT_EQ(place_of(picked->job, "r1"), picked->run);
    std::size_t index = 0;
    const auto shown = shown_run(job, answer::design(question), index, 1, true);
    ASSERT_TRUE(shown);
    EXPECT_EQ(shown->id, "r1");
}

}  // namespace
}  // namespace toft::request
