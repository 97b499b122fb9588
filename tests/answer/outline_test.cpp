#include "answer/outline.h"

#include "answer/describe.h"
#include "support/jobs.h"
#include "support/questions.h"

#include <gtest/gtest.h>

namespace toft::answer {
namespace {

TEST(Outline, SaysOfASchemeWhatTheWholeAnswerSays) {
    for (const char* name : {"demo", "tt-shed", "flat-cable-room"}) {
        const site::Job job = support::example_job(name, support::catalogue());
        const Answer a = design(support::question_of(job));
        ASSERT_FALSE(a.schemes.empty());
        for (const SchemeAnswer& s : a.schemes) {
            const auto setting = support::prepared(job);
            EXPECT_EQ(brief_words(setting, s.scheme), s.words);
            const RunAnswer run = outline_of(setting, s.scheme);
            EXPECT_EQ(run.fed_from, s.run.fed_from);
            EXPECT_EQ(run.device.rating_a, s.run.device.rating_a);
            EXPECT_EQ(run.stretches.size(), s.run.stretches.size());
            EXPECT_EQ(run.rcd.has_value(), s.run.rcd.has_value());
        }
    }
}

}  // namespace
}  // namespace toft::answer
