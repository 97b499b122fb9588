#include "spread/compact.h"

#include "spread/solve.h"
#include "support/spread_draws.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>

namespace toft::spread {
namespace {

Option adds(double price, double amount, double leaves_at_most = no_limit) {
    Option o;
    o.price = price;
    o.changes[0] = {amount, false, no_limit, leaves_at_most};
    return o;
}

TEST(Compact, WhatBearsLessAndCostsMoreIsStruck) {
    const Compact compact = compacted({1, {}, {{from_root, {adds(9, 2, 5), adds(8, 1, 5)}}}});
    ASSERT_EQ(compact.twigs.front().choices.size(), 1u);
    EXPECT_EQ(compact.twigs.front().choices.front().option, 1u);
}

TEST(Compact, AResourceThatNeverBindsIsLeftOut) {
    Problem problem{2, {}, {{from_root, {adds(1, 3, 5), adds(2, 1, 5)}}, {0, {adds(1, 3, 5)}}}};
    problem.branches[0].options[0].changes[1] = {3, false, no_limit, 100};
    EXPECT_EQ(compacted(problem).resources, 0u);  // the first cannot stay with 3, so nothing binds
    problem.branches[1].options.push_back(adds(4, 1, 5));
    EXPECT_EQ(compacted(problem).resources, 1u);
}

TEST(Compact, WhatNeverWorksIsStruckAndMayLeaveNothing) {
    const Compact compact = compacted({1, {4}, {{from_root, {adds(1, 2, 5)}}}});
    EXPECT_TRUE(compact.impossible);
}

TEST(Compact, ALimitHasTheToleranceOfEveryOther) {
    EXPECT_FALSE(compacted({1, {0.1}, {{from_root, {adds(1, 0.2, 0.3)}}}}).impossible);
    EXPECT_TRUE(compacted({1, {0.1}, {{from_root, {adds(1, 0.2, 0.299999)}}}}).impossible);
}

TEST(Compact, OnlyTheEndsHaveLimitsOfTheirOwnWhereAllShareOne) {
    const Compact compact = compacted(support::drawn_sizing(support::Shape::chain, 5, 1));
    for (std::size_t t = 0; t + 1 < compact.twigs.size(); ++t) {
        EXPECT_FALSE(compact.twigs[t].limits[0]) << t;
    }
    EXPECT_TRUE(compact.twigs.back().limits[0] || compact.twigs.back().limits[1]);
}

RC_GTEST_PROP(CompactLaw, BranchesAreInReadingOrder, ()) {
    const Problem problem = support::drawn({*rc::gen::arbitrary<unsigned>(), 9, 3, 2});
    const Compact compact = compacted(problem);
    std::vector<std::size_t> order;
    for (const Twig& twig : compact.twigs) order.push_back(twig.branch);
    RC_ASSERT(order == support::read_from_root(problem));
}

RC_GTEST_PROP(CompactLaw, TheBestSolutionIsNeverStruckNorItsStatesOutOfRange, ()) {
    const unsigned seed = *rc::gen::arbitrary<unsigned>();
    for (unsigned n = 0; n < 20; ++n) {
        // Quarters are on any grid, so that states can be compared as they are.
        const Problem problem = support::drawn({seed + n, 5, 4, 1});
        const auto best = support::try_all(problem);
        if (best.chosen.empty()) continue;
        const Compact compact = compacted(problem);
        std::vector<double> sent(compact.twigs.size());
        for (std::size_t t = 0; t < compact.twigs.size(); ++t) {
            const Twig& twig = compact.twigs[t];
            const auto chosen =
                std::find_if(twig.choices.begin(), twig.choices.end(),
                             [&](const Choice& c) { return c.option == best.chosen[twig.branch]; });
            RC_ASSERT(chosen != twig.choices.end());
            if (compact.resources == 0) continue;
            const double in = twig.parent == none ? compact.at_root[0] : sent[twig.parent];
            RC_ASSERT(in >= twig.low[0]);
            RC_ASSERT(in <= twig.high[0]);
            RC_ASSERT(in <= chosen->up[0]);
            sent[t] = chosen->amount[0] + (chosen->sets[0] ? 0 : in);
        }
    }
}

}  // namespace
}  // namespace toft::spread
