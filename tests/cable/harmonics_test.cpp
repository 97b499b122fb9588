#include "cable/harmonics.h"

#include "support/catalogue.h"
#include "support/working.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace toft::cable {
namespace {

const std::vector<tables::HarmonicStep>& steps() {
    return support::catalogue().cable_constants.harmonic;
}

double factor(double percent, double neutral) {
    Silent silent;
    return harmonic_factor(silent, steps(), ThirdHarmonics<Silent>{percent, neutral, 0});
}

/// Three lines alike: the neutral carries three times the share.
double even(double percent) { return factor(percent, 3 * percent / 100); }

// IEC 60364-5-52 Table E.52.1, recalled.
TEST(Harmonics, TheTablesFactorsGoByTheLinesUpToAThirdAndThenByTheNeutral) {
    EXPECT_DOUBLE_EQ(even(10), 1);
    EXPECT_DOUBLE_EQ(even(15), 1);
    EXPECT_DOUBLE_EQ(even(15.1), 0.86);
    EXPECT_DOUBLE_EQ(even(33), 0.86);
    EXPECT_NEAR(even(40), 0.86 / 1.2, 1e-12);
    EXPECT_NEAR(even(45), 0.86 / 1.35, 1e-12);
    EXPECT_NEAR(even(80), 1 / 2.4, 1e-12);
}

// Taken row by row, 46 % would leave 1/1.38 of the rating and 45 % only 0.86/1.35.
TEST(Harmonics, PastTheLastStepNoMoreIsLeftThanBeforeIt) {
    EXPECT_NEAR(even(46), 0.86 / 1.35, 1e-12);
    EXPECT_NEAR(even(52), 0.86 / 1.35, 1e-12);
    EXPECT_LT(even(53), 0.86 / 1.35);
}

// Two lines loaded and the third not: they leave as much as a line on the neutral besides.
TEST(Harmonics, TheNeutralNeverCarriesMoreThanTheRating) {
    EXPECT_NEAR(factor(30, 1.34), 1 / 1.34, 1e-12);
    EXPECT_NEAR(factor(10, 1.1), 1 / 1.1, 1e-12);
}

RC_GTEST_PROP(Harmonics, MoreOfThemNeverLeaveMore, ()) {
    const double less = *rc::gen::inRange(1, 1000) / 10.0;
    const double more = *rc::gen::inRange(static_cast<int>(less * 10), 1001) / 10.0;
    RC_ASSERT(even(more) <= even(less));
    const double neutral = *rc::gen::inRange(0, 300) / 100.0;
    RC_ASSERT(factor(less, neutral + 0.1) <= factor(less, neutral));
    RC_ASSERT(even(more) > 0 && even(less) <= 1);
}

TEST(Harmonics, EveryPrintedFormulaGivesItsPrintedResult) {
    for (const double percent : {12.0, 25.0, 40.0, 48.0, 90.0}) {
        Recording ledger;
        const auto share = ledger.stated({"h.3", ""}, percent, "survey");
        const auto neutral = ledger.let({"n.N", ""}, share * 3.0 / 100.0);
        const auto ch =
            harmonic_factor(ledger, steps(), ThirdHarmonics<Recording>{share, neutral, 0});
        EXPECT_DOUBLE_EQ(ch.value, even(percent));
        for (const std::string& wrong : support::wrong_lines(ledger.lines())) {
            ADD_FAILURE() << wrong;
        }
    }
}

}  // namespace
}  // namespace toft::cable
