// A whole followed through; longer ways and more buildings.

#include "tree/follow.h"

#include "support/jobs.h"
#include "support/trees.h"
#include "tree/best.h"

#include <gtest/gtest.h>

namespace toft::tree {
namespace {

using support::the_house;

Best best_of(const site::Job& job) {
    const auto& shop = support::small_shop();
    const Workplace at{shop.catalogue, shop.book, job, {}, nullptr};
    return cheapest(at, tree_of(at), {});
}

TEST(Follow, TheWholeCostsWhatItsRunsCostAndTheLastBuildingLosesTheSumOfItsWay) {
    const Best best = best_of(support::tree_job({the_house, 0, 1}));
    ASSERT_TRUE(best.found);
    double sum = 0;
    double drop = 0;
    for (const FollowedRun& run : best.found->runs) {
        sum += run.judged.price.total.number();
        drop += run.evaluation.figures.drop_percent;
    }
    EXPECT_NEAR(best.found->total, sum, 1e-9);
    EXPECT_NEAR(best.found->runs.back().evaluation.figures.drop_path, drop, 1e-9);
}

TEST(Follow, ALongerLegAnywhereNeverMakesTheWholeCheaper) {
    const Best before = best_of(support::tree_job({the_house, 0, 1}));
    ASSERT_TRUE(before.found);
    for (std::size_t i = 0; i < 3; ++i) {
        site::Job job = support::tree_job({the_house, 0, 1});
        job.runs[i].legs[0].length = support::measured(metres(30));
        const Best longer = best_of(job);
        ASSERT_TRUE(longer.found) << i;
        EXPECT_GT(longer.found->total, before.found->total) << i;
        EXPECT_TRUE(longer.proved);
    }
}

TEST(Follow, OneBuildingMoreNeverMakesTheWholeCheaper) {
    const Best two = best_of(support::tree_job({the_house, 0}));
    const Best three = best_of(support::tree_job({the_house, 0, 1}));
    ASSERT_TRUE(two.found && three.found);
    EXPECT_GT(three.found->total, two.found->total);
}

}  // namespace
}  // namespace toft::tree
