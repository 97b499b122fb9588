// The search prices millions of schemes silently: the lines of a price need no heap.

#include "price/price.h"
#include "support/catalogue.h"
#include "support/counted_new.h"
#include "support/draws.h"
#include "support/jobs.h"
#include "support/questions.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace toft::price {
namespace {

TEST(PriceAllocation, IsCounted) {
    const long before = support::allocations;
    const std::vector<int> some(100, 1);
    EXPECT_EQ(some.size(), 100u);
    EXPECT_GT(support::allocations - before, 0);
}

RC_GTEST_PROP(PriceAllocation, PricingSilentlyAllocatesNothing, ()) {
    const support::Drawn drawn = *support::any_drawn();
    const site::Job job = support::job_of(drawn);
    const study::RunScheme scheme = support::scheme_of(drawn);
    const auto setting = support::prepared(job);
    const Book& book = support::demo_book();
    const Extras extras{{Item::house_bonding_upgrade}, {}};
    Silent ledger;
    const long before = support::allocations;
    const Pounds total = price_of(ledger, book, setting, scheme, extras).total;
    const long after = support::allocations;
    RC_ASSERT(total > pounds(0));
    RC_ASSERT(after - before == 0);
}

}  // namespace
}  // namespace toft::price
