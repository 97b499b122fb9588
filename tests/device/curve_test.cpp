#include "device/curve.h"

#include "support/catalogue.h"
#include "support/device_draws.h"
#include "support/draws.h"
#include "support/working.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <cmath>

namespace toft::device {
namespace {

using support::any_current;
using support::any_device;
using support::any_larger_than;
using support::any_smaller_device;
using support::breaker;
using support::fuse;

const Name curve_name{"x", "figure"};

double time_at(const tables::Device& device, double amps) {
    Silent ledger;
    return operating_time(ledger, curve_name, device, amperes(amps)).number();
}

double current_for(const tables::Device& device, double time) {
    Silent ledger;
    return operating_current(ledger, curve_name, device, seconds(time)).number();
}

double energy_at(const tables::Device& device, double amps) {
    Silent ledger;
    return let_through(ledger, curve_name, device, amperes(amps)).number();
}

TEST(Curve, PassesThroughItsTabulatedPoints) {
    EXPECT_EQ(current_for(fuse(63), 0.4), 607);
    EXPECT_EQ(current_for(fuse(63), 5), 320);
    EXPECT_NEAR(time_at(fuse(63), 607), 0.4, 1e-12);
    EXPECT_NEAR(time_at(fuse(63), 320), 5, 1e-12);
}

TEST(Curve, BetweenPointsIsStraightOnLogarithmicAxes) {
    const double middle = std::sqrt(320.0 * 480.0);
    EXPECT_NEAR(time_at(fuse(63), middle), std::sqrt(5.0 * 1.0), 1e-9);
    EXPECT_NEAR(current_for(fuse(63), std::sqrt(5.0)), middle, 1e-9);
}

TEST(Curve, BelowItsCurveNoDeviceNeedOperate) {
    EXPECT_TRUE(std::isinf(time_at(fuse(63), 319)));
    EXPECT_TRUE(std::isinf(time_at(breaker("B", 32), 159)));
    EXPECT_TRUE(std::isinf(energy_at(breaker("B", 32), 159)));
}

TEST(Curve, ABreakerOperatesAtOnceFromItsMagneticCurrent) {
    EXPECT_EQ(time_at(breaker("B", 32), 160), 0.1);
    EXPECT_EQ(time_at(breaker("C", 32), 320), 0.1);
    EXPECT_TRUE(std::isinf(time_at(breaker("C", 32), 300)));
    EXPECT_EQ(current_for(breaker("C", 32), 5), 320);
    EXPECT_EQ(current_for(breaker("C", 32), 0.4), 320);
}

TEST(Curve, WhereItEndsNoCurrentIsKnownToBeQuickEnough) {
    // The curves of these two fuses begin at 0.4 s: nothing is known of 0.1 s.
    EXPECT_TRUE(std::isinf(current_for(fuse(5), 0.1)));
    EXPECT_TRUE(std::isinf(current_for(fuse(45), 0.2)));
    EXPECT_EQ(current_for(fuse(45), 0.4), 383);
}

TEST(Curve, ATimeLongerThanTheCurveTakesItsLongestPoint) {
    EXPECT_EQ(current_for(fuse(63), 10), 320);
}

TEST(Curve, AFuseLetsThroughLessAtLargerCurrents) {
    for (double rating : {16.0, 20.0, 32.0, 63.0, 80.0, 100.0}) {
        double before = energy_at(fuse(rating), current_for(fuse(rating), 5));
        for (double amps = current_for(fuse(rating), 5); amps < 1e4; amps *= 1.1) {
            const double now = energy_at(fuse(rating), amps);
            EXPECT_LE(now, before * (1 + 1e-9)) << rating << " A fuse at " << amps << " A";
            before = now;
        }
    }
}

TEST(Curve, ABreakerLetsThroughMoreAtLargerCurrentsUpToItsClass) {
    const auto& b32 = breaker("B", 32, 6);
    EXPECT_NEAR(energy_at(b32, 160), 160 * 160 * 0.1, 1e-9);
    EXPECT_NEAR(energy_at(b32, 400), 16000, 1e-9);
    EXPECT_EQ(energy_at(b32, 500), 18000);
    EXPECT_EQ(energy_at(b32, 3000), 18000);
    EXPECT_EQ(energy_at(b32, 4500), 32000);
    EXPECT_EQ(energy_at(b32, 6000), 45000);
    EXPECT_EQ(energy_at(breaker("B", 32, 10), 6000), 90000);
}

TEST(Curve, BeyondItsBreakingCapacityABreakersClassPromisesNothing) {
    EXPECT_NEAR(energy_at(breaker("B", 32, 6), 6001), 6001.0 * 6001 * 0.1, 1e-3);
}

TEST(Curve, ABreakerWithoutAClassLetsThroughATenthOfASecond) {
    EXPECT_NEAR(energy_at(breaker("B", 63), 3000), 900000, 1e-6);
}

TEST(Curve, ADTypeTripsWithinFiveSecondsAtTenTimesItsRatingUpTo32A) {
    EXPECT_EQ(current_for(breaker("D", 32), 5), 320);
    EXPECT_EQ(current_for(breaker("D", 32), 0.4), 640);
    EXPECT_EQ(current_for(breaker("D", 40), 5), 800);
    EXPECT_TRUE(std::isinf(time_at(breaker("D", 40), 799)));
    EXPECT_NEAR(time_at(breaker("D", 32), 640), 0.1, 1e-12);
}

TEST(Curve, AThermalReleaseTakesNoMoreHeatAtMoreCurrent) {
    // So the most energy of any fault of a run is that of its smallest or its largest current.
    for (double times : {10.0, 12.0, 15.0, 19.99}) {
        EXPECT_NEAR(energy_at(breaker("D", 16), times * 16), 160.0 * 160 * 5, 1e-6 * 128000);
    }
    EXPECT_NEAR(energy_at(breaker("D", 16), 320), 320.0 * 320 * 0.1, 1e-9);
}

TEST(Curve, ARewirableFuseLimitsNothingBeyondItsCurve) {
    const auto& wire = support::device("BS 3036", "", 30);
    EXPECT_NEAR(energy_at(wire, 450), 450.0 * 450 * 0.1, 1e-6);
    EXPECT_NEAR(energy_at(wire, 900), 900.0 * 900 * 0.1, 1e-6);
    const auto& filled = support::device("BS 88-2", "", 32);
    EXPECT_EQ(energy_at(filled, 900), energy_at(filled, 16000));
}

TEST(Curve, AFuseOfOnePointClearsByItWhateverTheCurrent) {
    const auto& cut_out = support::device("BS 1361", "", 60);
    EXPECT_EQ(time_at(cut_out, 330), 5);
    EXPECT_EQ(time_at(cut_out, 3000), 5);
    EXPECT_TRUE(std::isinf(time_at(cut_out, 329)));
    EXPECT_TRUE(std::isinf(current_for(cut_out, 0.4)));
    EXPECT_NEAR(energy_at(cut_out, 3000), 330.0 * 330 * 5, 1e-6);
}

TEST(Curve, AMouldedBreakerIsSureOfAFifthOfASecond) {
    const auto& moulded = support::device("BS EN 60947-2", "TM", 63);
    EXPECT_EQ(current_for(moulded, 5), 756);
    EXPECT_EQ(time_at(moulded, 756), 0.2);
    EXPECT_TRUE(std::isinf(current_for(moulded, 0.1)));
    EXPECT_NEAR(energy_at(moulded, 5000), 5000.0 * 5000 * 0.2, 1e-6);
}

TEST(Curve, AnRcboIsABreakerOfTheSameType) {
    for (const auto& one : support::catalogue().devices) {
        if (one.kind != tables::Kind::rcbo) continue;
        const auto& other =
            breaker(one.curve, one.rating.number(), one.breaking.value.number() / 1000);
        for (double amps = 10; amps < 8000; amps *= 1.3) {
            EXPECT_EQ(time_at(one, amps), time_at(other, amps)) << one.curve << amps;
            EXPECT_EQ(energy_at(one, amps), energy_at(other, amps)) << one.curve << amps;
        }
    }
}

RC_GTEST_PROP(Curve, ALargerRatingNeverAsksForLessCurrent, ()) {
    const auto& small = any_smaller_device();
    const auto& large = any_larger_than(small);
    // Where its curve ends nothing is known of a device: times that both curves reach.
    const Seconds reached = most(small.points.back().time, large.points.back().time);
    const double time = support::number_between(reached.number(), 5.01);
    RC_ASSERT(current_for(small, time) <= current_for(large, time));
}

RC_GTEST_PROP(Curve, ALargerRatingNeverOperatesSooner, ()) {
    const auto& small = any_smaller_device();
    const auto& large = any_larger_than(small);
    // Beyond the end of the smaller curve its last time stands for any shorter one.
    const double amps = support::number_between(1, small.points.back().current.value.number());
    RC_ASSERT(time_at(small, amps) <= time_at(large, amps));
}

RC_GTEST_PROP(Curve, WithinItsCapacityABreakerKeepsToItsClass, ()) {
    const auto& device = support::any_device_of_a_class();
    const double end = device.points.back().current.value.number();
    const double amps = support::number_between(end, device.breaking.value.number());
    const double own = amps * amps * device.points.back().time.number();
    double limit = device.let_through->value.number();
    for (auto level = device.let_through_at.rbegin(); level != device.let_through_at.rend();
         ++level) {
        if (amps <= level->up_to.number()) limit = level->limit.value.number();
    }
    RC_ASSERT(energy_at(device, amps) == std::min(own, limit));
}

// On-Site Guide, Table B7 (recalled): behind a class 3 breaker up to 3 kA, 1.0 mm² of copper serves
// a type B of 16 A and 1.5 mm² every other up to 32 A; up to 6 kA 2.5 mm² serves all.
TEST(Curve, TheGuidesLeastProtectiveConductorsWithstandTheClass) {
    const auto withstands = [](double section) { return 115 * 115 * section * section; };
    for (const char* curve : {"B", "C"}) {
        for (const double rating : {16.0, 32.0}) {
            const auto& device = support::breaker(curve, rating, 6);
            const bool small = rating == 16 && curve[0] == 'B';
            EXPECT_LE(energy_at(device, 3000), withstands(small ? 1.0 : 1.5)) << curve << rating;
            EXPECT_GT(energy_at(device, 6000), withstands(1.5)) << curve << rating;
            EXPECT_LE(energy_at(device, 6000), withstands(2.5)) << curve << rating;
        }
    }
}

RC_GTEST_PROP(Curve, NoCurrentBetweenTwoLetsThroughMoreThanBoth, ()) {
    // So the two ends of a run bound the heat of a fault anywhere along it.
    const auto& device = any_device();
    const double low = device.points.front().current.value.number() *
                       std::pow(10.0, support::number_between(-0.2, 2));
    const double middle = low * support::number_between(1, 5);
    const double high = middle * support::number_between(1, 5);
    RC_ASSERT(energy_at(device, middle) <=
              std::max(energy_at(device, low), energy_at(device, high)) * (1 + 1e-9));
}

RC_GTEST_PROP(Curve, MoreCurrentNeverTakesLonger, ()) {
    const auto& device = any_device();
    const double amps = any_current();
    const double more = amps * support::number_between(1, 3);
    RC_ASSERT(time_at(device, more) <= time_at(device, amps));
}

RC_GTEST_PROP(Curve, AtTheOperatingCurrentTheDeviceHasOperatedInTime, ()) {
    const auto& device = any_device();
    const double time = support::number_between(device.points.back().time.number(), 5.01);
    const double amps = current_for(device, time);
    RC_ASSERT(std::isfinite(amps));
    RC_ASSERT(time_at(device, amps * (1 + 1e-9)) <= time * (1 + 1e-6));
}

RC_GTEST_PROP(Curve, WritesWorkingThatHoldsAndGivesTheSameFigures, ()) {
    const auto& device = any_device();
    const double amps = any_current();
    const double time = support::number_between(0.1, 5);
    Recording ledger;
    const auto i = ledger.stated({"I", "current"}, amperes(amps), "survey");
    const auto t = operating_time(ledger, {"t", "time"}, device, i);
    const auto e = let_through(ledger, {"I2t", "energy", 2}, device, i);
    const auto ia = operating_current(ledger, {"Ia", "current", 3}, device, seconds(time));
    RC_ASSERT(t.value.number() == time_at(device, amps));
    RC_ASSERT(e.value.number() == energy_at(device, amps));
    RC_ASSERT(ia.value.number() == current_for(device, time));
    for (const std::string& wrong : support::wrong_lines(ledger.lines())) RC_FAIL(wrong);
}

}  // namespace
}  // namespace toft::device
