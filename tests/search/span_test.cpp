// What open facts may make of prices: no scheme costs less or more, wherever the facts are.

#include "search/span.h"

#include "search/search.h"
#include "support/jobs.h"
#include "support/random_jobs.h"
#include "support/solving.h"

#include <gtest/gtest.h>

#include <random>

namespace toft::search {
namespace {

/// Spans count tax as it is; a total has it to the penny.
constexpr double tax_rounding = 0.005 + 1e-6;

TEST(Span, AddsPartByPart) {
    const Span sum = Span{1, 2, 3, 4} + Span{10, 20, 30, 40};
    EXPECT_EQ(sum.far_low, 11);
    EXPECT_EQ(sum.far_high, 22);
    EXPECT_EQ(sum.near_low, 33);
    EXPECT_EQ(sum.near_high, 44);
}

TEST(Span, IsSurelyAboveOnlyIfDearerFarAndNear) {
    const Span base{10, 12, 5, 7};
    EXPECT_TRUE((Span{13, 13, 8, 8}.surely_above(base)));
    EXPECT_FALSE((Span{13, 13, 7, 8}.surely_above(base)));
    EXPECT_FALSE((Span{12, 13, 8, 8}.surely_above(base)));
    EXPECT_FALSE(base.surely_above(base));
}

TEST(Span, AHeadCostsTheSameHoweverLongTheRun) {
    price::Price<Silent> price;
    price.house_end = pounds(100);
    price.remedies = pounds(50);
    const Span s = head_span(support::demo_book(), price);
    EXPECT_NEAR(s.far_low, 120, 1e-9);
    EXPECT_NEAR(s.near_high, 180, 1e-9);
    EXPECT_EQ(s.far_low, s.near_low);
}

TEST(Span, SettingsOfDifferentLengthsArePricedApart) {
    site::Job job = support::plain_job();
    job.runs[0].legs[0].length = support::between(metres(10), metres(20));
    study::Corner better;
    better.all = study::End::better;
    const auto longest = support::prepared(job);
    const auto shortest = support::prepared(job, better);
    const auto earthing = study::BuildingEarthing::supply_earth;
    EXPECT_TRUE(priced_alike(longest, longest, earthing));
    EXPECT_FALSE(priced_alike(longest, shortest, earthing));
}

/// At corners drawn at random every scheme that may come first costs what its span allows.
TEST(Span, HoldsThePriceAtEveryCorner) {
    std::mt19937 dice(11);
    for (unsigned seed = 1; seed <= 30; ++seed) {
        for (const site::Job& job : {support::random_job(seed), support::random_demand_job(seed)}) {
            const support::Solving s(job);
            const auto& all = s.found().possible;
            if (all.empty()) continue;
            for (int i = 0; i < 6; ++i) {
                study::Corner corner;
                for (const study::OpenFact& fact : s.solver().open()) {
                    corner.except.emplace_back(fact.pointer, static_cast<study::End>(dice() % 4));
                }
                const Possible& p = all[dice() % all.size()];
                const double total = s.solver().price_at(corner, solve::Solution{{p.scheme}, ""});
                EXPECT_GE(total, std::min(p.span.near_low, p.span.far_low) - tax_rounding) << seed;
                EXPECT_LE(total, std::max(p.span.near_high, p.span.far_high) + tax_rounding)
                    << seed;
            }
        }
    }
}

}  // namespace
}  // namespace toft::search
