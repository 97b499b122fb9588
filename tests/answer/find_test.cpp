#include "answer/find.h"

#include "support/jobs.h"
#include "support/questions.h"

#include <gtest/gtest.h>

namespace toft::answer {
namespace {

TEST(Find, AnyBuildableSchemeByItsKeySoundOrNot) {
    const site::Job job = support::plain_job();
    const Question q = support::question_of(job);
    for (const char* key : {"supply-earth/3x10/core/fuse-32/tails",
                            "supply-earth/2x1.5/armour/fuse-100/tails/rcd-300",  // far from sound
                            "own-electrode/2x16/armour/C40-10kA/new-board"}) {
        const auto found = find_scheme(q, key);
        ASSERT_TRUE(found) << key;
        EXPECT_EQ(study::scheme_key(*found), key);
    }
}

TEST(Find, WhatCannotBeBuiltIsNotFound) {
    const site::Job job = support::plain_job();
    const Question q = support::question_of(job);
    EXPECT_FALSE(find_scheme(q, "own-electrode/3x10/core/fuse-32/tails"));
    EXPECT_FALSE(find_scheme(q, "supply-earth/3x10/core/fuse-32/spare-way"));
    EXPECT_FALSE(find_scheme(q, ""));
}

TEST(Find, AMistypedKeyHasANearestOne) {
    const site::Job job = support::plain_job();
    const Question q = support::question_of(job);
    EXPECT_EQ(nearest_scheme(q, "suply-earth/3x10/core/fuse-32/tails"),
              "supply-earth/3x10/core/fuse-32/tails");
}

}  // namespace
}  // namespace toft::answer
