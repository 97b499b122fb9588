// Solving several runs under many readings of their facts, against the plain loop over every scheme
// of every run.

#include "solve/tree_solver.h"

#include "support/solving.h"
#include "support/trees.h"

#include <gtest/gtest.h>

#include <random>

namespace toft::solve {
namespace {

using study::Corner;
using study::End;

const support::SmallShop& shop() { return support::small_shop(); }
Means means() { return {shop().catalogue, shop().book}; }

double by_plain_loop(const site::Job& job, const Corner& corner, study::GroundMemo& memo) {
    return support::brute_cheapest({shop().catalogue, shop().book, job, corner, &memo}, {}).total;
}

/// A fact of the solver's job known to be a figure drawn at random, all others at their worse end.
Corner drawn(const TreeSolver& solver, std::mt19937& dice) {
    const auto& open = solver.open();
    const study::OpenFact& fact = open[dice() % open.size()];
    return support::known_as(fact, support::within_range(fact, double(dice() % 101) / 100));
}

TEST(TreeSolver, ComesToWhatThePlainLoopComesToAtAnyReading) {
    int sound = 0;
    for (unsigned seed = 21; seed < 33; ++seed) {
        const site::Job job = support::random_open_tree_job(seed);
        study::GroundMemo memo;
        const TreeSolver solver(means(), job, memo);
        if (solver.open().empty()) continue;
        std::mt19937 dice(seed);
        Corner better;
        better.all = End::better;
        for (const Corner& corner : {Corner{}, better, drawn(solver, dice)}) {
            const Solution s = solver.at(corner);
            const double plain = by_plain_loop(job, corner, memo);
            EXPECT_EQ(s.sound(), plain < tree::no_limit) << seed;
            if (!s.sound()) continue;
            EXPECT_NEAR(s.total, plain, tree::penny_part) << seed;
            EXPECT_NEAR(solver.price_at(corner, s), plain, tree::penny_part) << seed;
            ++sound;
        }
        EXPECT_TRUE(solver.all_proved());
    }
    EXPECT_GT(sound, 15);
}

TEST(TreeSolver, NoFigureOfAFactIsBetterThanItsBetterEndNorWorseThanItsWorse) {
    int tried = 0;
    for (unsigned seed = 41; seed < 71; ++seed) {
        const site::Job job = support::random_open_tree_job(seed);
        study::GroundMemo memo;
        const TreeSolver solver(means(), job, memo);
        std::mt19937 dice(seed);
        for (const study::OpenFact& fact : solver.open()) {
            const Solution best = solver.may_be({}, fact.pointer);
            for (int i = 0; i < 3; ++i) {
                const double value = support::within_range(fact, double(dice() % 101) / 100);
                const Solution there = solver.at(support::known_as(fact, value));
                if (solver.as_it_stands().sound()) {
                    ASSERT_TRUE(there.sound()) << seed << fact.pointer;
                    EXPECT_LE(there.total, solver.as_it_stands().total + tree::penny_part);
                }
                if (!there.sound()) continue;
                ASSERT_TRUE(best.sound()) << seed << fact.pointer;
                EXPECT_GE(there.total, best.total - tree::penny_part) << seed << fact.pointer;
                ++tried;
            }
        }
    }
    EXPECT_GT(tried, 100);
}

TEST(TreeSolver, AReadingAskedForAgainIsNotSolvedAgain) {
    const site::Job job = support::random_open_tree_job(21);
    study::GroundMemo memo;
    long told = 0;
    const TreeSolver solver(means(), job, memo, [&](long solved) {
        told = solved;
        return true;
    });
    EXPECT_EQ(told, 1);
    solver.at({});
    EXPECT_EQ(solver.solved(), 1);
    EXPECT_EQ(solver.hoped_for().key, solver.hoped_for().key);
    EXPECT_EQ(solver.solved(), 2);
    EXPECT_EQ(told, 2);
}

TEST(TreeSolver, ToldToStopItSolvesNoMore) {
    const site::Job job = support::random_open_tree_job(21);
    study::GroundMemo memo;
    const TreeSolver solver(means(), job, memo, [](long) { return false; });
    EXPECT_TRUE(solver.stopped());
    EXPECT_EQ(solver.hoped_for().key, solver.as_it_stands().key);
    EXPECT_EQ(solver.solved(), 1);
}

TEST(TreeSolver, WhatCostsTheSameIsBuiltAsItStands) {
    for (unsigned seed = 21; seed < 41; ++seed) {
        const site::Job job = support::random_open_tree_job(seed);
        study::GroundMemo memo;
        const TreeSolver solver(means(), job, memo);
        const Solution& stands = solver.as_it_stands();
        const Solution hoped = solver.hoped_for();
        if (!stands.sound() || hoped.total < stands.total - tree::penny_part) continue;
        EXPECT_EQ(hoped.key, stands.key) << seed;
    }
}

TEST(TreeSolver, ALengthThatBreaksTheWholeIsWhatItHangsOn) {
    site::Job job = support::tree_job({support::the_house, 0});
    job.runs[1].legs[0].length = support::between(metres(20), metres(2000));
    study::GroundMemo memo;
    const TreeSolver solver(means(), job, memo);
    ASSERT_FALSE(solver.as_it_stands().sound());
    const Solution hoped = solver.hoped_for();
    ASSERT_TRUE(hoped.sound());
    EXPECT_EQ(solver.hangs_on(hoped), std::vector<std::string>{"/runs/1/legs/0/length_m"});
}

}  // namespace
}  // namespace toft::solve
