// Solving from what may come first against searching anew, and both against their own words.

#include "solve/run_solver.h"

#include "support/jobs.h"
#include "support/random_jobs.h"
#include "support/solving.h"

#include <gtest/gtest.h>

#include <random>

namespace toft::solve {
namespace {

using study::End;
using support::Solving;

/// A corner of that job drawn at random: each fact at an end, or known as some figure.
study::Corner drawn(const std::vector<study::OpenFact>& open, std::mt19937& dice) {
    study::Corner corner;
    corner.all = dice() % 3 == 0 ? End::better : End::worse;
    for (const study::OpenFact& fact : open) {
        const auto way = dice() % 5;
        if (way == 4) continue;
        corner.except.emplace_back(fact.pointer, static_cast<End>(way));
        if (fact.unit == "no or yes" || dice() % 2 == 0) continue;
        const double low = support::within_range(fact, double(dice() % 100) / 100);
        const double high = dice() % 2 == 0 ? low : (low + fact.high) / 2;
        corner.within.push_back({fact.pointer, low, high});
    }
    return corner;
}

/// Both ways to solve come to the same at corners drawn at random.
void expect_one_answer(const site::Job& job, unsigned seed) {
    const Solving by_possible(job);
    if (!by_possible.found().all_possible) return;
    const Solving by_search(job, false);
    std::mt19937 dice(seed);
    for (int i = 0; i < 12; ++i) {
        const study::Corner corner = drawn(by_possible.solver().open(), dice);
        const Solution a = by_possible.solver().at(corner);
        const Solution b = by_search.solver().at(corner);
        ASSERT_EQ(a.key, b.key) << "seed " << seed << ", corner " << i;
        if (!a.sound()) continue;
        EXPECT_EQ(a.total, b.total) << a.key;
        EXPECT_EQ(a.headroom, b.headroom) << a.key;
        EXPECT_EQ(a.dependability, b.dependability) << a.key;
        EXPECT_EQ(by_possible.solver().price_at(corner, a), a.total) << a.key;
    }
}

TEST(RunSolver, WhatMayComeFirstIsEnoughToSolveAtAnyCorner) {
    for (unsigned seed = 1; seed <= 60; ++seed) {
        site::Job job = support::random_job(seed);
        job.intake.demand = support::measured(amperes(20));
        expect_one_answer(job, seed);
    }
}

TEST(RunSolver, AlsoOverGroundThatWasReadAndWithCircuits) {
    for (unsigned seed = 1; seed <= 12; ++seed) {
        expect_one_answer(support::random_ground_job(seed), seed);
        expect_one_answer(support::random_demand_job(seed), seed);
    }
}

TEST(RunSolver, AsThingsStandIsTheFirstOfTheAnswer) {
    for (unsigned seed = 1; seed <= 20; ++seed) {
        const Solving s(support::random_job(seed));
        const Solution& stands = s.solver().as_it_stands();
        EXPECT_EQ(stands.sound(), s.found().any_sound());
        EXPECT_EQ(s.solver().at({}).key, stands.key);
        EXPECT_EQ(solve_run({support::catalogue(), support::demo_book()}, s.job()).key, stands.key);
        if (stands.sound()) {
            EXPECT_EQ(stands.key, s.found().contenders.front().key);
        }
    }
}

TEST(RunSolver, AFactKnownAsAFigureIsTheFactStatedSo) {
    site::Job job = support::plain_job();
    job.buildings[1].load = support::measured(amperes(30));
    job.runs[0].legs[0].length = support::between(metres(10), metres(90));
    const Solving open(job);
    const study::OpenFact fact = open.solver().open().at(0);
    for (const double length : {10.0, 25.0, 40.0, 71.0, 90.0}) {
        job.runs[0].legs[0].length = support::measured(metres(length));
        const Solution stated = solve_run({support::catalogue(), support::demo_book()}, job);
        const Solution known = open.solver().at(support::known_as(fact, length));
        EXPECT_EQ(known.key, stated.key) << length;
        EXPECT_NEAR(known.total, stated.total, 1e-9) << length;
    }
}

}  // namespace
}  // namespace toft::solve
