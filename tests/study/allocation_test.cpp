// The search works out millions of schemes silently: not one of them may touch the heap.

#include "study/figures.h"
#include "support/catalogue.h"
#include "support/counted_new.h"
#include "support/draws.h"
#include "support/jobs.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace toft::study {
namespace {

TEST(Allocation, IsCounted) {
    const long before = support::allocations;
    const std::vector<int> some(100, 1);
    EXPECT_EQ(some.size(), 100u);
    EXPECT_GT(support::allocations - before, 0);
}

RC_GTEST_PROP(Allocation, WorkingOutSilentlyAllocatesNothing, ()) {
    const support::Drawn drawn = *support::any_drawn();
    const site::Job job = support::job_of(drawn);
    const RunScheme scheme = support::scheme_of(drawn);
    const auto setting = support::prepared(job);
    Silent ledger;
    Figures<Silent> figures;
    const long before = support::allocations;
    work_out(ledger, setting, scheme, Stage::heat, figures);
    const long after = support::allocations;
    RC_ASSERT(figures.done == Stage::heat);
    RC_ASSERT(after - before == 0);
}

}  // namespace
}  // namespace toft::study
