// One run of an answer for several.

#include "answer/answer.h"
#include "support/trees.h"

#include <gtest/gtest.h>

namespace toft::answer {
namespace {

TEST(OneRun, PartsAreFoundByTheirRunAndAJobIsSeenFromIt) {
    const site::Job job = support::tree_job({support::the_house, 0});
    const Answer answer =
        design({support::small_shop().catalogue, support::small_shop().book, job});
    ASSERT_FALSE(answer.schemes.empty());
    const SchemeAnswer& scheme = answer.schemes.front();
    EXPECT_EQ(part_of(scheme, "r0"), &scheme);
    ASSERT_TRUE(part_of(scheme, "r1"));
    EXPECT_EQ(part_of(scheme, "r1")->run.id, "r1");
    EXPECT_EQ(part_of(scheme, "r2"), nullptr);
    const site::Job seen = seen_from(job, "r1");
    EXPECT_EQ(seen.runs.front().id, "r1");
    EXPECT_EQ(seen.runs.front().stated_at, std::size_t{1});
    const Answer of_run = for_run(answer, "r1");
    ASSERT_EQ(of_run.schemes.size(), answer.schemes.size());
    EXPECT_EQ(of_run.schemes.front().sentence, part_of(scheme, "r1")->run_sentence);
    EXPECT_TRUE(for_run(answer, "r9").schemes.empty());
}

}  // namespace
}  // namespace toft::answer
