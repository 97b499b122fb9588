// The cheapest whole against the plain loop over every scheme of every run.

#include "tree/best.h"

#include "study/ground_memo.h"
#include "support/trees.h"

#include <gtest/gtest.h>

namespace toft::tree {
namespace {

/// Whether a sound way was found.
bool expect_same(unsigned seed) {
    const auto& shop = support::small_shop();
    const site::Job job = support::random_tree_job(seed);
    study::GroundMemo memo;
    const Workplace at{shop.catalogue, shop.book, job, {}, &memo};
    const Best best = cheapest(at, tree_of(at), {});
    const auto tried = support::brute_cheapest(at, {});
    EXPECT_TRUE(best.proved) << seed;
    EXPECT_EQ(best.found.has_value(), tried.total < no_limit) << seed;
    if (!best.found) return false;
    EXPECT_NEAR(best.found->total, tried.total, penny_part) << seed;
    EXPECT_LE(best.at_least, best.found->total) << seed;
    return true;
}

TEST(Best, NoWayToBuildTheWholeIsCheaper) {
    int found = 0;
    for (unsigned seed = 21; seed < 45; ++seed) found += expect_same(seed);
    EXPECT_GT(found, 10);
}

TEST(Best, ABuildingBehindMayTakeItsOwnElectrodeSoThatTheRunBeforeNeedNotBondIt) {
    EXPECT_TRUE(expect_same(4));
}

}  // namespace
}  // namespace toft::tree
