#include "rules/rulebook.h"

#include <gtest/gtest.h>

namespace toft::rules {
namespace {

TEST(RecordedRulebook, HoldsTheSameRulesInTheSameOrder) {
    const auto& bare = rulebook_at<Silent>();
    const auto& with_working = rulebook_at<Recording>();
    EXPECT_EQ(&bare, &rulebook());
    for (std::size_t i = 0; i < rule_count; ++i) {
        EXPECT_EQ(bare[i].info, with_working[i].info);
        EXPECT_NE(with_working[i].judge, nullptr);
    }
}

}  // namespace
}  // namespace toft::rules
