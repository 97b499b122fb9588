#include "spread/plan.h"

#include "support/spread_draws.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <set>

namespace toft::spread {
namespace {

TEST(Plan, AStarIsJoinedTwoByTwo) {
    Problem problem{0, {}, std::vector<Branch>(4, Branch{from_root, {Option{}}})};
    const auto plan = planned(compacted(problem));
    ASSERT_EQ(plan.size(), 7u);
    EXPECT_EQ(plan[4].covers, 2u);
    EXPECT_EQ(plan[5].covers, 2u);
    EXPECT_EQ(plan[6].covers, 4u);
}

RC_GTEST_PROP(PlanLaw, EveryPartIsMadeBeforeItIsUsedAndUsedOnce, ()) {
    const Problem problem = support::drawn({*rc::gen::arbitrary<unsigned>(), 15, 1, 0});
    const auto plan = planned(compacted(problem));
    std::set<std::uint32_t> grown;
    std::set<std::uint32_t> used;
    for (std::uint32_t s = 0; s < plan.size(); ++s) {
        if (s > 0) RC_ASSERT(plan[s].covers >= plan[s - 1].covers);
        if (plan[s].twig != none) RC_ASSERT(grown.insert(plan[s].twig).second);
        for (const std::uint32_t part : {plan[s].left, plan[s].right}) {
            if (part == none) continue;
            RC_ASSERT(part < s);
            RC_ASSERT(used.insert(part).second);
        }
    }
    RC_ASSERT(grown.size() == 15u);
    RC_ASSERT(used.size() == plan.size() - 1);
    RC_ASSERT(plan.back().covers == 15u);
}

}  // namespace
}  // namespace toft::spread
