#include "device/curve.h"

#include "support/catalogue.h"
#include "support/draws.h"
#include "support/working.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>

namespace toft::device {
namespace {

using support::breaker;
using support::fuse;

const Name name{"x", "figure"};

double time_at(const tables::Device& device, double amps) {
    Silent ledger;
    return operating_time(ledger, name, device, amperes(amps)).number();
}

double current_for(const tables::Device& device, double time) {
    Silent ledger;
    return operating_current(ledger, name, device, seconds(time)).number();
}

double energy_at(const tables::Device& device, double amps) {
    Silent ledger;
    return let_through(ledger, name, device, amperes(amps)).number();
}

const tables::Device& any_device() {
    const auto& devices = support::catalogue().devices;
    return devices[*rc::gen::inRange<std::size_t>(0, devices.size())];
}

double any_current() { return std::pow(10.0, support::number_between(0, 4.3)); }

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
    EXPECT_NEAR(energy_at(b32, 500), 25000, 1e-9);
    EXPECT_EQ(energy_at(b32, 3000), 45000);
    EXPECT_EQ(energy_at(b32, 6000), 45000);
    EXPECT_EQ(energy_at(breaker("B", 32, 10), 6000), 90000);
}

TEST(Curve, BeyondItsBreakingCapacityABreakersClassPromisesNothing) {
    EXPECT_NEAR(energy_at(breaker("B", 32, 6), 6001), 6001.0 * 6001 * 0.1, 1e-3);
}

TEST(Curve, ABreakerWithoutAClassLetsThroughATenthOfASecond) {
    EXPECT_NEAR(energy_at(breaker("B", 63), 3000), 900000, 1e-6);
}

RC_GTEST_PROP(Curve, MoreCurrentNeverTakesLonger, ()) {
    const auto& device = any_device();
    const double amps = any_current();
    const double more = amps * support::number_between(1, 3);
    RC_ASSERT(time_at(device, more) <= time_at(device, amps));
}

RC_GTEST_PROP(Curve, AtTheOperatingCurrentTheDeviceHasOperatedInTime, ()) {
    const auto& device = any_device();
    const double time = support::number_between(0.4, 5);
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
