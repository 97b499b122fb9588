// What a run costs at least, against what it comes to in cheapest wholes.

#include "tree/least_alone.h"

#include "site/built.h"
#include "support/jobs.h"
#include "support/trees.h"
#include "tree/best.h"

#include <gtest/gtest.h>

namespace toft::tree {
namespace {

TEST(LeastAlone, NoRunOfACheapestWholeCostsLess) {
    const auto& shop = support::small_shop();
    int seen = 0;
    for (unsigned seed = 100; seed < 130; ++seed) {
        const site::Job job = support::random_tree_job(seed);
        const Workplace at{shop.catalogue, shop.book, job, {}, nullptr};
        const Tree tree = tree_of(at);
        const Best best = cheapest(at, tree, {});
        if (!best.found) continue;
        for (std::size_t i = 0; i < tree.order.size(); ++i) {
            EXPECT_LE(least_alone(at, tree.order[i].run).price,
                      best.found->runs[i].alone + penny_part)
                << seed;
            ++seen;
        }
    }
    EXPECT_GT(seen, 30);
}

TEST(LeastAlone, DiggingThatMayBeSharedIsToldApart) {
    const auto& shop = support::small_shop();
    site::Job job = support::tree_job({support::the_house});
    const Workplace at{shop.catalogue, shop.book, job, {}, nullptr};
    const LeastAlone own = least_alone(at, 0);
    EXPECT_TRUE(own.digs.empty());
    job.runs[0].legs[0].trench = "drive";
    const LeastAlone shared = least_alone(at, 0);
    ASSERT_EQ(shared.digs.size(), 1u);
    EXPECT_EQ(shared.digs[0].trench, "drive");
    EXPECT_NEAR(shared.price + shared.digs[0].price, own.price, 1e-9);
    const double metre =
        shop.book.amount(price::Item::trench_lawn) + shop.book.amount(price::Item::sand_and_tape);
    const double tax = 1 + shop.book.amount(price::Item::vat_percent) / 100;
    EXPECT_NEAR(shared.digs[0].price, 20 * metre * tax, 1e-9);
}

}  // namespace
}  // namespace toft::tree
