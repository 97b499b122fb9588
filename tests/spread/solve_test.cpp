#include "spread/solve.h"

#include "support/spread_draws.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>

namespace toft::spread {
namespace {

using support::drawn;
using support::DrawnSpread;
using support::try_all;

Option option(double price, double adds, double leaves_at_most = no_limit) {
    Option o;
    o.price = price;
    o.changes[0].amount = adds;
    o.changes[0].leaves_at_most = leaves_at_most;
    return o;
}

Problem of(std::vector<Branch> branches) { return {1, {}, std::move(branches)}; }

Answer solved(const Problem& problem, const Patience& patience = {}) {
    const auto answer = solve(problem, patience);
    if (!answer) ADD_FAILURE() << answer.error().front().says;
    return answer.value_or(Answer{});
}

void expect_like_plain_loop(const Problem& problem) {
    const auto plain = try_all(problem);
    const Answer answer = solved(problem);
    RC_ASSERT(answer.standing == (plain.chosen.empty() ? Standing::impossible : Standing::proved));
    RC_ASSERT(answer.chosen == plain.chosen);
    RC_ASSERT(answer.price == plain.price);
    RC_ASSERT(answer.at_least == plain.price);
}

/// Each property takes a few of them, so that thirty runs look at over a thousand problems.
constexpr unsigned each = 40;

unsigned any_seed() { return *rc::gen::arbitrary<unsigned>(); }

TEST(Spread, AThickTrunkSparesThreeThickTwigs) {
    // Each end may lack 5. Thin runs lose 4, thick ones 1; one thick trunk is cheaper than three.
    const Problem problem = of({{from_root, {option(10, 4), option(25, 1)}},
                                {0, {option(10, 4, 5), option(25, 1, 5)}},
                                {0, {option(10, 4, 5), option(25, 1, 5)}},
                                {0, {option(10, 4, 5), option(25, 1, 5)}}});
    const Answer answer = solved(problem);
    EXPECT_EQ(answer.chosen, (std::vector<std::size_t>{1, 0, 0, 0}));
    EXPECT_EQ(answer.price, 55);
    EXPECT_EQ(answer.standing, Standing::proved);
}

TEST(Spread, SizesChosenRunByRunWouldFail) {
    // The first run alone would take the thin cable; what lies behind it could then not be built.
    const Problem problem = of({{from_root, {option(10, 4, 5), option(25, 1, 5)}},
                                {0, {option(10, 3, 5), option(15, 2, 5)}}});
    EXPECT_EQ(solved(problem).chosen, (std::vector<std::size_t>{1, 0}));
}

TEST(Spread, AtTheLimitIsMet) {
    const Problem problem = of({{from_root, {option(1, 0.1)}}, {0, {option(1, 0.2, 0.3)}}});
    EXPECT_GT(0.1 + 0.2, 0.3);
    EXPECT_EQ(solved(problem).standing, Standing::proved);
    const Problem more = of({{from_root, {option(1, 0.1)}}, {0, {option(1, 0.2000000004, 0.3)}}});
    EXPECT_EQ(solved(more).standing, Standing::impossible);
}

TEST(Spread, AnElectrodeOfItsOwnForgetsWhatCame) {
    Option own = option(80, 2);
    own.changes[0].sets = true;
    const Problem problem = of({{from_root, {option(10, 9)}},
                                {0, {option(10, 3), own}},
                                {1, {option(5, 4, 7), option(70, 1, 10)}}});
    EXPECT_EQ(solved(problem).chosen, (std::vector<std::size_t>{0, 1, 0}));
}

TEST(Spread, WhatMustNotArriveIsNotSent) {
    Option tender = option(5, 0);
    tender.changes[0].takes_at_most = 2;
    const Problem problem = of({{from_root, {option(10, 4), option(30, 1)}}, {0, {tender}}});
    EXPECT_EQ(solved(problem).chosen, (std::vector<std::size_t>{1, 0}));
}

TEST(Spread, NothingToChooseCostsNothing) {
    EXPECT_EQ(solved(of({})).price, 0);
    EXPECT_EQ(solved(of({})).standing, Standing::proved);
}

TEST(Spread, FaultsAreSaidInsteadOfAnAnswer) { EXPECT_FALSE(solve(of({{from_root, {}}}))); }

TEST(Spread, OfEqualPricesTheTrunkTakesTheEarlierOption) {
    // One of two must be thick; read from the root the trunk comes first, though it is listed last.
    const Problem problem = of(
        {{1, {option(10, 4, 5), option(25, 1, 5)}}, {from_root, {option(10, 4), option(25, 1)}}});
    EXPECT_EQ(solved(problem).chosen, (std::vector<std::size_t>{1, 0}));
}

TEST(SpreadDraws, SomeCanBeBuiltAndSomeCannotAndLimitsCost) {
    int possible = 0;
    int dearer = 0;
    for (unsigned seed = 0; seed < 300; ++seed) {
        Problem problem = drawn({seed, 1 + seed % 6, 4, 1 + seed % 3});
        const double price = try_all(problem).price;
        possible += price < no_limit;
        problem.resources = 0;
        dearer += price < no_limit && price > try_all(problem).price;
    }
    EXPECT_GT(possible, 100);
    EXPECT_LT(possible, 280);
    EXPECT_GT(dearer, 60);
}

RC_GTEST_PROP(SpreadLaw, FindsWhatThePlainLoopFinds, ()) {
    const unsigned seed = any_seed();
    const auto resources = static_cast<std::size_t>(*rc::gen::inRange(1, 4));
    for (unsigned n = 0; n < each; ++n) {
        expect_like_plain_loop(drawn({seed + n, 1 + n % 6, 4, resources}));
    }
}

RC_GTEST_PROP(SpreadLaw, FindsItWithManyResources, ()) {
    const unsigned seed = any_seed();
    const auto resources = static_cast<std::size_t>(*rc::gen::inRange(4, 9));
    for (unsigned n = 0; n < each; ++n) {
        expect_like_plain_loop(drawn({seed + n, 1 + n % 5, 4, resources}));
    }
}

RC_GTEST_PROP(SpreadLaw, TiesOfDecimalsAreDecidedAlike, ()) {
    const unsigned seed = any_seed();
    for (unsigned n = 0; n < each; ++n) {
        DrawnSpread asked{seed + n, 1 + n % 6, 4, 2, false, 0.1};
        const Problem problem = drawn(asked);
        const auto plain = try_all(problem);
        const Answer answer = solved(problem);
        RC_ASSERT(answer.chosen.empty() == plain.chosen.empty());
        if (plain.chosen.empty()) continue;
        RC_ASSERT(std::abs(answer.price - plain.price) < 1e-9);
        RC_ASSERT(keeps_limits(problem, answer.chosen));
    }
}

RC_GTEST_PROP(SpreadLaw, ALooserLimitNeverCostsMore, ()) {
    const unsigned seed = any_seed();
    for (unsigned n = 0; n < each; ++n) {
        Problem problem = drawn({seed + n, 12, 4, 3});
        const double before = solved(problem).price;
        auto& options = problem.branches[(seed + n) % 12].options;
        options[n % options.size()].changes[n % 3].leaves_at_most += 0.5;
        RC_ASSERT(solved(problem).price <= before);
    }
}

RC_GTEST_PROP(SpreadLaw, OneOptionMoreNeverCostsMore, ()) {
    const unsigned seed = any_seed();
    for (unsigned n = 0; n < each; ++n) {
        Problem problem = drawn({seed + n, 12, 4, 3});
        Problem fewer = problem;
        auto& options = fewer.branches[(seed + n) % 12].options;
        if (options.size() == 1) continue;
        options.erase(options.begin() + n % options.size());
        RC_ASSERT(solved(problem).price <= solved(fewer).price);
    }
}

RC_GTEST_PROP(SpreadLaw, TheOrderOfBranchesDoesNotChangeThePrice, ()) {
    const unsigned seed = any_seed();
    for (unsigned n = 0; n < each; ++n) {
        const Problem problem = drawn({seed + n, 14, 4, 3});
        Problem turned = problem;
        const std::size_t last = problem.branches.size() - 1;
        for (std::size_t b = 0; b <= last; ++b) {
            turned.branches[last - b] = problem.branches[b];
            std::size_t& parent = turned.branches[last - b].parent;
            if (parent != from_root) parent = last - parent;
        }
        RC_ASSERT(solved(turned).price == solved(problem).price);
    }
}

RC_GTEST_PROP(SpreadLaw, WhoStopsEarlyStillHasABound, ()) {
    const unsigned seed = any_seed();
    const Problem problem = support::drawn_sizing(support::Shape::chain, 60, seed);
    const Answer whole = solved(problem);
    RC_ASSERT(whole.standing == Standing::proved);
    Patience patience;
    patience.most_offers = whole.offers / static_cast<unsigned>(*rc::gen::inRange(2, 50));
    const Answer part = solved(problem, patience);
    RC_ASSERT(part.standing == Standing::stopped);
    RC_ASSERT(part.at_least <= whole.price);
    RC_ASSERT(part.price >= whole.price);
    if (!part.chosen.empty()) RC_ASSERT(keeps_limits(problem, part.chosen));
}

TEST(Spread, TheCallerIsToldHowFarItIsAndMayStop) {
    const Problem problem = support::drawn_sizing(support::Shape::chain, 60, 7);
    Progress last;
    Patience patience;
    patience.go_on = [&](const Progress& progress) {
        EXPECT_GE(progress.offers, last.offers);
        EXPECT_GE(progress.at_least, last.at_least);
        EXPECT_LE(progress.price, last.price);
        last = progress;
        return progress.offers < 3000;
    };
    EXPECT_EQ(solved(problem, patience).standing, Standing::stopped);
    EXPECT_GE(last.offers, 3000u);
}

}  // namespace
}  // namespace toft::spread
