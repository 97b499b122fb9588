// One run alone: the tree finds what the search finds.

#include "tree/judge.h"

#include "search/search.h"
#include "support/random_jobs.h"
#include "support/trees.h"
#include "tree/best.h"

#include <gtest/gtest.h>

namespace toft::tree {
namespace {

TEST(Judge, OfOneRunTheCheapestIsWhatTheSearchPutsFirst) {
    const auto& shop = support::small_shop();
    int found = 0;
    for (const double length : {5.0, 40.0, 90.0}) {
        site::Job job = support::tree_job({support::the_house});
        job.runs[0].legs[0].length = {true, metres(length), metres(length)};
        const Workplace at{shop.catalogue, shop.book, job, {}, nullptr};
        const Best best = cheapest(at, tree_of(at), {});
        const auto one = search::search(shop.catalogue, shop.book, job, 0, {});
        ASSERT_EQ(best.found.has_value(), one.any_sound()) << length;
        if (!best.found) continue;
        EXPECT_NEAR(best.found->total, one.contenders.front().total, 1e-9) << length;
        ++found;
    }
    EXPECT_GT(found, 1);
}

}  // namespace
}  // namespace toft::tree
