#include "unknown/grouped.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>

namespace toft::unknown {
namespace {

/// A group is idle when none of its facts matters.
bool none_of(const Group& group, const std::vector<bool>& matters) {
    return std::none_of(group.begin(), group.end(),
                        [&](std::size_t place) { return matters[place]; });
}

RC_GTEST_PROP(Grouped, LookingInGroupsFindsWhatLookingAtEachFinds,
              (const std::vector<std::pair<bool, bool>>& facts)) {
    std::vector<bool> grouped;
    std::vector<bool> matters;
    for (const auto& [may_be_grouped, does] : facts) {
        grouped.push_back(may_be_grouped);
        matters.push_back(does);
    }
    const auto idle =
        idle_among(grouped, [&](const Group& group) { return none_of(group, matters); });
    RC_ASSERT(idle.size() == facts.size());
    for (std::size_t i = 0; i < facts.size(); ++i) {
        RC_ASSERT(idle[i] == (grouped[i] && !matters[i]));
    }
}

TEST(Grouped, WhereNothingMattersOneLookIsEnough) {
    int looks = 0;
    idle_among(std::vector<bool>(40, true), [&](const Group& group) {
        ++looks;
        return !group.empty();
    });
    EXPECT_EQ(looks, 1);
}

TEST(Grouped, OneThatMattersIsFoundByHalving) {
    int looks = 0;
    idle_among(std::vector<bool>(64, true), [&](const Group& group) {
        ++looks;
        return std::find(group.begin(), group.end(), 17u) == group.end();
    });
    EXPECT_LE(looks, 13);
}

}  // namespace
}  // namespace toft::unknown
