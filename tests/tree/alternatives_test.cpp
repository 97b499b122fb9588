// Ways worth showing beside the cheapest.

#include "tree/alternatives.h"

#include "support/trees.h"

#include <gtest/gtest.h>

namespace toft::tree {
namespace {

Alternatives ways_of(const site::Job& job) {
    const auto& shop = support::small_shop();
    const Workplace at{shop.catalogue, shop.book, job, {}, nullptr};
    return alternatives(at, tree_of(at), {});
}

TEST(Alternatives, TheCheapestComesFirstAndNoneIsBeaten) {
    const Alternatives all = ways_of(support::tree_job({support::the_house, 0}));
    ASSERT_FALSE(all.ways.empty());
    EXPECT_EQ(all.ways.front().found->total, all.cheapest.found->total);
    for (const Best& a : all.ways) {
        for (const Best& b : all.ways) {
            if (&a == &b) continue;
            EXPECT_FALSE(a.found->total <= b.found->total &&
                         a.found->headroom >= b.found->headroom &&
                         a.found->dependability >= b.found->dependability);
        }
    }
}

TEST(Alternatives, WhoPrefersHeadroomSeesTheMostOfItFirst) {
    site::Job job = support::tree_job({support::the_house, 0});
    job.wishes.prefer = site::Prefer::headroom;
    const Alternatives all = ways_of(job);
    ASSERT_GT(all.ways.size(), 1u);
    EXPECT_GT(all.ways.front().found->headroom, all.cheapest.found->headroom);
}

}  // namespace
}  // namespace toft::tree
