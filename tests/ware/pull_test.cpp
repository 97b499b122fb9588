// Pulling a cable through duct. The formulas are the belt formula of Euler and Eytelwein and
// sliding friction, as any textbook of mechanics has them; the figures are checked by adding up
// short pieces.

#include "ware/pull.h"

#include "base/pi.h"
#include "support/catalogue.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>

namespace toft::ware {
namespace {

using support::catalogue;

TEST(Pull, StraightIsFrictionTimesWeight) {
    // A body of 10 kg on µ = 0.3 takes 29.42 N: 0.3 × 10 × 9.80665.
    EXPECT_NEAR(after_straight({}, {0.3, 9.80665}, metres(10)).newtons, 29.42, 0.005);
    EXPECT_NEAR(after_straight({100}, {0.3, 9.80665}, metres(10)).newtons, 129.42, 0.005);
}

TEST(Pull, ABendIsTheSumOfSmallBends) {
    // dT = µ T dθ, summed in a hundred thousand steps.
    double pull = 100;
    const int steps = 100000;
    for (int i = 0; i < steps; ++i) pull += 0.35 * pull * (pi / 2) / steps;
    EXPECT_NEAR(after_bend({100}, 0.35, pi / 2).newtons, pull, 0.01);
}

TEST(Pull, ARopeHalfRoundAPostWithHalfFrictionHoldsNearlyFiveTimes) {
    EXPECT_NEAR(after_bend({1}, 0.5, pi).newtons, 4.81, 0.005);
}

TEST(Pull, QuarterTurnsLeaveThePullWithinItsLimitAndOneMoreDoesNot) {
    for (const double limit : {100.0, 219.0, 480.0, 5000.0}) {
        const int turns = quarter_turns({100}, {limit}, 0.5);
        ASSERT_GE(turns, 0);
        EXPECT_LE(after_bend({100}, 0.5, turns * pi / 2).newtons, limit * 1.000001);
        EXPECT_GT(after_bend({100}, 0.5, (turns + 1) * pi / 2).newtons, limit);
    }
    EXPECT_EQ(quarter_turns({101}, {100}, 0.5), -1);
}

TEST(Pull, TenSquareOfThreeCoresBears1500NewtonsByTheCores) {
    const auto& cable = support::cable(3, 10);
    EXPECT_NEAR(eye_limit(catalogue(), cable).newtons, 3 * 10 * 50, 1e-9);
    EXPECT_NEAR(stocking_limit(catalogue(), cable).newtons, 3 * 19.5 * 19.5, 1e-6);
    const auto pull = pull_of(catalogue(), cable, metres(30));
    ASSERT_TRUE(pull);
    EXPECT_NEAR(pull->dry.newtons, 0.5 * 0.866 * 9.80665 * 30, 1e-9);
    EXPECT_LT(pull->wet.newtons, pull->dry.newtons);
    EXPECT_EQ(pull->turns_dry, 2);
}

TEST(Pull, AluminiumBearsLessThanCopper) {
    const auto family = tables::Family::armoured_xlpe_aluminium;
    EXPECT_LT(eye_limit(catalogue(), support::cable(family, 4, 50)).newtons,
              eye_limit(catalogue(), support::cable(4, 50)).newtons);
}

TEST(Pull, NothingIsSaidToBeFineWhereBendsAreUnknown) {
    const std::string words = pull_words(catalogue(), support::cable(3, 10), metres(30));
    EXPECT_NE(words.find("bends are not stated"), std::string::npos);
    EXPECT_EQ(words.find("fine"), std::string::npos);
    const auto& pvc = support::cable(tables::Family::armoured_pvc_copper, 3, 10);
    EXPECT_FALSE(pull_of(catalogue(), pvc, metres(30)));
    EXPECT_NE(pull_words(catalogue(), pvc, metres(30)).find("not estimated"), std::string::npos);
}

TEST(Pull, TooLongADuctIsTooMuchEvenStraight) {
    const auto& cable = support::cable(3, 10);
    const auto pull = pull_of(catalogue(), cable, metres(600));
    ASSERT_TRUE(pull);
    EXPECT_EQ(pull->turns_dry, -1);
    EXPECT_NE(pull_words(catalogue(), cable, metres(600)).find("too much"), std::string::npos);
}

RC_GTEST_PROP(Pull, StockingNeverBearsMoreThanTheEye, ()) {
    const auto& cables = catalogue().cables;
    const auto& cable = cables[*rc::gen::inRange<std::size_t>(0, cables.size())];
    RC_ASSERT(stocking_limit(catalogue(), cable).newtons <= eye_limit(catalogue(), cable).newtons);
}

}  // namespace
}  // namespace toft::ware
