#include "spread/frontier.h"

#include "base/limit.h"
#include "spread/solve.h"
#include "support/spread_draws.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <cmath>

namespace toft::spread {
namespace {

/// Limits drawn in by the share that is to stay free.
Problem drawn_in(Problem problem, double floor) {
    for (Branch& branch : problem.branches) {
        for (Option& option : branch.options) {
            for (Change& change : option.changes) change.leaves_at_most *= 1 - floor;
        }
    }
    return problem;
}

FrontierAsk ask_for(const Problem& problem) {
    FrontierAsk ask;
    ask.problem_at = [problem](double floor) { return drawn_in(problem, floor); };
    ask.highest = 0.8;
    ask.headroom_step = 0.05;
    return ask;
}

struct Sample {
    double price;
    double headroom;  ///< highest floor of the step's tenth at which it keeps the limits
    int grade;
};

std::vector<Sample> every_choice(const Problem& problem, double highest, double step) {
    std::vector<Sample> all;
    std::vector<std::size_t> chosen(problem.branches.size(), 0);
    while (true) {
        Sample sample{price_of(problem, chosen), -1, 99};
        double own = no_limit;
        for (std::size_t b = 0; b < chosen.size(); ++b) {
            const Option& option = problem.branches[b].options[chosen[b]];
            sample.grade = std::min(sample.grade, option.grade);
            own = std::min(own, option.headroom);
        }
        for (double floor = 0; floor < highest + step / 20; floor += step / 10) {
            if (within(floor, own) && keeps_limits(drawn_in(problem, floor), chosen)) {
                sample.headroom = floor;
            }
        }
        if (sample.headroom >= 0) all.push_back(sample);
        std::size_t b = 0;
        while (b < chosen.size() && ++chosen[b] == problem.branches[b].options.size()) {
            chosen[b++] = 0;
        }
        if (b == chosen.size()) return all;
    }
}

Problem small_problem(unsigned seed) {
    support::DrawnSpread asked{seed, 4, 4, 2, false, 0.25};
    return support::drawn(asked);
}

RC_GTEST_PROP(FrontierLaw, EachPointIsTheCheapestOfItsFloors, ()) {
    const Problem problem = small_problem(*rc::gen::arbitrary<unsigned>());
    const auto found = frontier(ask_for(problem));
    RC_ASSERT(found && found->proved);
    for (const Point& point : found->points) {
        double least = no_limit;
        for (const Sample& sample : every_choice(problem, point.headroom, point.headroom)) {
            if (sample.grade < point.grade) continue;
            if (within(point.headroom, sample.headroom)) least = std::min(least, sample.price);
        }
        if (point.headroom > 0) RC_ASSERT(point.price == least);
        RC_ASSERT(point.at_least == point.price);
        RC_ASSERT(keeps_limits(drawn_in(problem, point.headroom), point.chosen));
        for (std::size_t b = 0; b < point.chosen.size(); ++b) {
            const Option& option = problem.branches[b].options[point.chosen[b]];
            RC_ASSERT(option.grade >= point.grade);
            RC_ASSERT(within(point.headroom, option.headroom));
        }
    }
}

RC_GTEST_PROP(FrontierLaw, WhateverCanBeBuiltIsCovered, ()) {
    const Problem problem = small_problem(*rc::gen::arbitrary<unsigned>());
    FrontierAsk ask = ask_for(problem);
    ask.price_step = 0.25 * *rc::gen::inRange(0, 5);
    const auto found = frontier(ask);
    RC_ASSERT(found && found->proved);
    for (const Sample& sample : every_choice(problem, ask.highest, ask.headroom_step)) {
        const bool covered =
            std::any_of(found->points.begin(), found->points.end(), [&](const Point& p) {
                if (p.grade < sample.grade) return false;
                const bool close = p.headroom >= sample.headroom - 1.001 * ask.headroom_step;
                const bool above = p.headroom >= sample.headroom - 1e-9;
                return (close && p.price <= sample.price) ||
                       (above && p.price <= sample.price + ask.price_step);
            });
        RC_ASSERT(covered);
    }
}

RC_GTEST_PROP(FrontierLaw, NoPointBeatsAnother, ()) {
    const Problem problem = small_problem(*rc::gen::arbitrary<unsigned>());
    const auto found = frontier(ask_for(problem));
    RC_ASSERT(found.has_value());
    for (const Point& a : found->points) {
        for (const Point& b : found->points) {
            const bool beats =
                &a != &b && a.price <= b.price && a.headroom >= b.headroom && a.grade >= b.grade;
            RC_ASSERT(!beats);
        }
    }
}

TEST(Frontier, ThickerCopperBuysHeadroomAndABetterEarthCostsMore) {
    Branch run{from_root, std::vector<Option>(3)};
    const double price[] = {10, 20, 30};
    const double drop[] = {4, 2, 2};
    for (std::size_t o = 0; o < 3; ++o) {
        run.options[o].price = price[o];
        run.options[o].changes[0] = {drop[o], false, no_limit, 5};
        run.options[o].grade = o == 2 ? 2 : 1;
    }
    const auto found = frontier(ask_for({1, {}, {run}}));
    ASSERT_TRUE(found);
    ASSERT_EQ(found->points.size(), 3u);
    EXPECT_NEAR(found->points[0].headroom, 0.2, 0.05);
    EXPECT_NEAR(found->points[1].headroom, 0.6, 0.05);
    EXPECT_EQ(found->points[1].grade, 1);
    EXPECT_EQ(found->points[2].grade, 2);
    EXPECT_EQ(found->points[2].chosen, std::vector<std::size_t>{2});
}

TEST(Frontier, StepsAndFloorsMustMakeSense) {
    FrontierAsk ask = ask_for({1, {}, {{from_root, {Option{}}}}});
    EXPECT_TRUE(frontier(ask));
    ask.headroom_step = 0;
    ask.highest = -1;
    ASSERT_FALSE(frontier(ask));
    EXPECT_EQ(frontier(ask).error().size(), 2u);
    EXPECT_FALSE(frontier(ask_for({1, {}, {{from_root, {}}}})));
}

TEST(Frontier, WhoStopsIsToldThatItIsNotProved) {
    const Problem problem = support::drawn_sizing(support::Shape::chain, 40, 3);
    Patience patience;
    patience.most_offers = 100;
    const auto found = frontier(ask_for(problem), patience);
    ASSERT_TRUE(found);
    EXPECT_FALSE(found->proved);
}

}  // namespace
}  // namespace toft::spread
