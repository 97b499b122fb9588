#include "shock/touch_time.h"

#include "shock/current_zone.h"
#include "support/catalogue.h"
#include "support/working.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>
#include <limits>

namespace toft::shock {
namespace {

using tables::TouchCurve;

using support::shock_tables;

double longest(TouchCurve curve, double touch) {
    Silent ledger;
    return longest_touch(ledger, {"t", ""}, shock_tables(), curve, volts(touch)).time.number();
}

TouchVerdict verdict(TouchCurve curve, double touch, double time) {
    return touch_verdict(shock_tables(), curve, volts(touch), seconds(time));
}

TEST(TouchTime, UpToTheThresholdNoTimeIsSet) {
    EXPECT_TRUE(std::isinf(longest(TouchCurve::dry, 50)));
    EXPECT_TRUE(std::isinf(longest(TouchCurve::wet, 25)));
    EXPECT_EQ(verdict(TouchCurve::dry, 50, 1e9), TouchVerdict::no_limit);
    EXPECT_EQ(verdict(TouchCurve::wet, 50, 5), TouchVerdict::beyond);
}

TEST(TouchTime, BetweenThresholdAndFirstPointTheFirstPointHolds) {
    EXPECT_EQ(longest(TouchCurve::dry, 50.1), 0.6);
    EXPECT_EQ(longest(TouchCurve::dry, 75), 0.6);
    EXPECT_EQ(longest(TouchCurve::wet, 26), 0.47);
}

TEST(TouchTime, BetweenPointsItIsStraightOnLogPaper) {
    EXPECT_NEAR(longest(TouchCurve::dry, std::sqrt(150.0 * 220)), std::sqrt(0.27 * 0.17), 1e-12);
    EXPECT_EQ(longest(TouchCurve::dry, 220), 0.17);
}

TEST(TouchTime, PastTheCurveNothingCountsAsInside) {
    Silent ledger;
    const auto past = longest_touch(ledger, {"t", ""}, shock_tables(), TouchCurve::wet, volts(300));
    EXPECT_EQ(past.range, TouchRange::past_curve);
    EXPECT_EQ(past.time, seconds(0.02));
    EXPECT_EQ(verdict(TouchCurve::wet, 300, 0.001), TouchVerdict::beyond);
    EXPECT_EQ(verdict(TouchCurve::wet, 280, 0.02), TouchVerdict::inside);
}

TEST(TouchTime, WhatNothingClearsIsBeyondAboveTheThreshold) {
    const double forever = std::numeric_limits<double>::infinity();
    EXPECT_EQ(verdict(TouchCurve::dry, 70, forever), TouchVerdict::beyond);
    EXPECT_EQ(verdict(TouchCurve::dry, 49, forever), TouchVerdict::no_limit);
}

/// From memory, like the curve: with 0.8 of 230 V at the fault, half of it on a protective
/// conductor as thick as the line, the 0.4 s of the rules (Table 41.1) fit the dry curve.
TEST(TouchTime, TheRulesFourTenthsOfASecondLieOnTheDryCurveFor92Volts) {
    EXPECT_EQ(verdict(TouchCurve::dry, 0.8 * 230 / 2, 0.4), TouchVerdict::inside);
    EXPECT_LT(longest(TouchCurve::dry, 0.8 * 230 / 2), 0.46);
}

/// Points of both curves with the current that their own impedance lets through (from memory):
/// the two remembered tables must fit each other.
TEST(TouchTime, PointsOfTheCurvesStayBelowTheLineOfFibrillation) {
    const struct {
        TouchCurve curve;
        double touch, impedance;
    } points[] = {
        {TouchCurve::dry, 75, 1625},  {TouchCurve::dry, 90, 1600},  {TouchCurve::dry, 150, 1475},
        {TouchCurve::dry, 220, 1375}, {TouchCurve::dry, 350, 1365}, {TouchCurve::dry, 500, 1360},
        {TouchCurve::wet, 50, 925},   {TouchCurve::wet, 75, 825},   {TouchCurve::wet, 110, 730},
        {TouchCurve::wet, 150, 660},  {TouchCurve::wet, 280, 570}};
    for (const auto& point : points) {
        const Amperes current = volts(point.touch) / ohms(point.impedance);
        const Seconds time = seconds(longest(point.curve, point.touch));
        EXPECT_LE(current_zone(shock_tables(), current, time), CurrentZone::ac3) << point.touch;
        EXPECT_GE(current_zone(shock_tables(), current, time), CurrentZone::ac2) << point.touch;
    }
}

TEST(TouchTime, WritesWorkingThatHolds) {
    for (double touch : {40.0, 60.0, 75.0, 92.0, 230.0, 600.0}) {
        for (TouchCurve curve : {TouchCurve::dry, TouchCurve::wet}) {
            Recording ledger;
            const auto found = longest_touch(ledger, {"t.longest", ""}, shock_tables(), curve,
                                             ledger.stated({"Ut", ""}, volts(touch), "computed"));
            EXPECT_EQ(found.time.value.number(), longest(curve, touch));
            for (const std::string& wrong : support::wrong_lines(ledger.lines())) {
                ADD_FAILURE() << wrong;
            }
        }
    }
}

RC_GTEST_PROP(TouchTimeLaws, MoreVoltsNeverLastLongerAndMoreTimeNeverAllowsMoreVolts, ()) {
    const TouchCurve curve = *rc::gen::arbitrary<bool>() ? TouchCurve::dry : TouchCurve::wet;
    const double touch = *rc::gen::inRange(10, 6000) / 10.0;
    const double more = touch + *rc::gen::inRange(1, 1000) / 10.0;
    RC_ASSERT(longest(curve, more) <= longest(curve, touch));
    const double time = *rc::gen::inRange(1, 2000) / 1000.0;
    if (verdict(curve, touch, time) == TouchVerdict::beyond) {
        RC_ASSERT(verdict(curve, more, time) == TouchVerdict::beyond);
        RC_ASSERT(verdict(curve, touch, time * 1.5) == TouchVerdict::beyond);
    }
    RC_ASSERT(longest(TouchCurve::wet, touch) <= longest(TouchCurve::dry, touch));
}

}  // namespace
}  // namespace toft::shock
