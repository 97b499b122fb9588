#include "demand/lines.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>
#include <complex>

namespace toft::demand {
namespace {

Lines<Silent> lines(double a, double b, double c) { return {{amperes(a), amperes(b), amperes(c)}}; }

double neutral(const Lines<Silent>& of, const Lines<Silent>& third = {}) {
    Silent ledger;
    return neutral_current(ledger, of, third, "").number();
}

TEST(PhaseLines, TheLargestCircuitGoesFirstToTheLineThatHasLeast) {
    const std::vector<Spread> circuits{
        {amperes(6), 1}, {amperes(32), 1}, {amperes(20), 1}, {amperes(16), 3}, {amperes(10), 1}};
    EXPECT_EQ(spread(circuits, 3), (std::vector<int>{2, 0, 1, every_line, 2}));
    EXPECT_EQ(spread(circuits, 1), (std::vector<int>{0, 0, 0, 0, 0}));
}

TEST(PhaseLines, WhatComesLaterMovesNothingThatIsThereToday) {
    const std::vector<Spread> circuits{{amperes(6), 1}, {amperes(32), 1, true}, {amperes(20), 1}};
    EXPECT_EQ(spread(circuits, 3), (std::vector<int>{1, 2, 0}));
}

TEST(PhaseLines, TheMostAndTheLeastLoadedAreFound) {
    EXPECT_EQ(most_loaded(lines(3, 9, 5), 3), 1u);
    EXPECT_EQ(least_loaded(lines(3, 9, 5), 3), 0u);
    EXPECT_EQ(most_loaded(lines(3, 9, 5), 1), 0u);
}

TEST(PhaseLines, TheNeutralOfEvenLinesCarriesNothingAndThatOfOneLineAllOfIt) {
    EXPECT_EQ(neutral(lines(20.3, 20.3, 20.3)), 0);
    EXPECT_DOUBLE_EQ(neutral(lines(20, 0, 0)), 20);
    EXPECT_DOUBLE_EQ(neutral(lines(20, 20, 0)), 20);
}

TEST(PhaseLines, ThirdHarmonicsOfThreeLinesAddUpInTheNeutral) {
    EXPECT_NEAR(neutral(lines(20, 20, 20), lines(6, 6, 6)), 18, 1e-9);
    EXPECT_DOUBLE_EQ(neutral(lines(20, 0, 0), lines(15, 0, 0)), 25);
}

RC_GTEST_PROP(PhaseLines, TheNeutralIsTheSumOfThreePhasors, ()) {
    const auto draw = [] { return *rc::gen::inRange(0, 10000) / 100.0; };
    const double i[] = {draw(), draw(), draw()};
    const double h[] = {draw(), draw(), draw()};
    std::complex<double> first;
    for (int k = 0; k < 3; ++k) first += std::polar(i[k], 2 * M_PI * k / 3);
    const double third = h[0] + h[1] + h[2];
    RC_ASSERT(std::abs(neutral(lines(i[0], i[1], i[2]), lines(h[0], h[1], h[2])) -
                       std::hypot(std::abs(first), third)) < 1e-9);
}

RC_GTEST_PROP(PhaseLines, EveryCircuitIsOnALineAndThreePhasesOnAll, ()) {
    std::vector<Spread> circuits;
    for (const int i : *rc::gen::container<std::vector<int>>(rc::gen::inRange(0, 400))) {
        circuits.push_back({amperes(i % 64), i % 5 == 0 ? 3 : 1, i % 3 == 0});
    }
    const auto at = spread(circuits, 3);
    RC_ASSERT(at.size() == circuits.size());
    for (std::size_t k = 0; k < at.size(); ++k) {
        RC_ASSERT((at[k] == every_line) == (circuits[k].phases == 3));
        RC_ASSERT(at[k] < 3);
    }
}

}  // namespace
}  // namespace toft::demand
