#include "spread/pass.h"

#include "spread/solve.h"
#include "support/spread_draws.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace toft::spread {
namespace {

/// Slopes of nothing: the pass is then a plain table of all offers that nothing beats.
Slopes flat(const Compact& compact) {
    Slopes slopes;
    slopes.arriving.resize(compact.twigs.size());
    evaluate(compact, slopes);
    return slopes;
}

PassOrder capped(std::size_t cap, double price = no_limit) {
    PassOrder order;
    order.cap = cap;
    order.price = price;
    order.guard = 1e-9;
    return order;
}

constexpr std::size_t all = 100000000;

RC_GTEST_PROP(PassLaw, WithoutBoundsItFindsWhatTheSolverFindsWithThem, ()) {
    const unsigned seed = *rc::gen::arbitrary<unsigned>();
    for (unsigned n = 0; n < 10; ++n) {
        const Problem problem = support::drawn({seed + n, 18, 4, 1 + n % 3});
        const auto answer = solve(problem);
        const Compact compact = compacted(problem);
        if (compact.impossible) continue;
        const Passed passed = pass(compact, planned(compact), flat(compact), capped(all));
        RC_ASSERT(passed.best.picks.empty() == answer->chosen.empty());
        for (std::size_t t = 0; t < passed.best.picks.size(); ++t) {
            const Twig& twig = compact.twigs[t];
            RC_ASSERT(twig.choices[passed.best.picks[t]].option == answer->chosen[twig.branch]);
        }
    }
}

RC_GTEST_PROP(PassLaw, WhatIsCutIsAnsweredFor, ()) {
    const unsigned seed = *rc::gen::arbitrary<unsigned>();
    const auto cap = static_cast<std::size_t>(*rc::gen::inRange(1, 6));
    for (unsigned n = 0; n < 20; ++n) {
        const Problem problem = support::drawn({seed + n, 6, 4, 1 + n % 3});
        const double optimum = support::try_all(problem).price;
        const Compact compact = compacted(problem);
        if (compact.impossible || optimum == no_limit) continue;
        const Slopes slopes = bounded(compact).slopes;
        const double known = optimum + 0.25 * *rc::gen::inRange(0, 20);
        const Passed passed = pass(compact, planned(compact), slopes, capped(cap, known));
        RC_ASSERT(passed.best.price >= optimum);
        RC_ASSERT(std::min(passed.best.price, passed.cut) <= optimum + 1e-6);
    }
}

TEST(Pass, WithACapThereAreFewerOffersAndACut) {
    const Problem problem = support::drawn_sizing(support::Shape::chain, 40, 5);
    const Compact compact = compacted(problem);
    const Bounded start = bounded(compact);
    const auto plan = planned(compact);
    const Passed few = pass(compact, plan, start.slopes, capped(5, start.best.price));
    const Passed many = pass(compact, plan, start.slopes, capped(all, start.best.price));
    EXPECT_LT(few.offers, many.offers);
    EXPECT_LT(few.cut, no_limit);
    EXPECT_EQ(many.cut, no_limit);
    EXPECT_LE(few.cut, many.best.price);
}

TEST(Pass, StopsWhenToldTo) {
    const Problem problem = support::drawn_sizing(support::Shape::chain, 40, 5);
    const Compact compact = compacted(problem);
    PassOrder order = capped(all);
    order.go_on = [](std::uint64_t offers) { return offers < 500; };
    const Passed passed = pass(compact, planned(compact), flat(compact), order);
    EXPECT_TRUE(passed.stopped);
    EXPECT_TRUE(passed.best.picks.empty());
    EXPECT_LT(passed.offers, 5000u);
}

}  // namespace
}  // namespace toft::spread
