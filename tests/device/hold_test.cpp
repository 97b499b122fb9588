#include "device/hold.h"

#include "device/curve.h"
#include "support/catalogue.h"
#include "support/device_draws.h"
#include "support/draws.h"
#include "support/working.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>

namespace toft::device {
namespace {

using support::any_current;
using support::any_device;
using support::any_larger_than;
using support::any_smaller_device;
using support::breaker;
using support::fuse;

const Name hold_name{"x", "figure"};

double held(const tables::Device& device, double amps) {
    Silent ledger;
    return holding_time(ledger, hold_name, device, amperes(amps)).number();
}

double operated(const tables::Device& device, double amps) {
    Silent ledger;
    return operating_time(ledger, hold_name, device, amperes(amps)).number();
}

TEST(Hold, AFuseHoldsTheLowerGatesOfItsStandard) {
    EXPECT_EQ(held(fuse(63), 78.75), 3600);
    EXPECT_EQ(held(fuse(63), 160), 10);
    EXPECT_EQ(held(fuse(63), 450), 0.1);
    EXPECT_EQ(held(fuse(63), 948), 0.01);
    EXPECT_EQ(held(fuse(63), 949), 0);
    EXPECT_EQ(held(fuse(100), 125), 7200);
}

TEST(Hold, BetweenTwoGatesOnlyTheShorterTimeIsPromised) {
    EXPECT_EQ(held(fuse(63), 160.1), 0.1);
    EXPECT_EQ(held(fuse(63), 79), 10);
}

TEST(Hold, ABreakerHoldsTheCurrentsOfItsTests) {
    EXPECT_EQ(held(breaker("B", 32), 1.13 * 32), 3600);
    EXPECT_EQ(held(breaker("B", 80, 10), 1.13 * 80), 7200);
    EXPECT_EQ(held(breaker("B", 32), 2.55 * 32), 1);
    EXPECT_EQ(held(breaker("B", 32), 96), 0.1);
    EXPECT_EQ(held(breaker("B", 32), 96.1), 0);
    EXPECT_EQ(held(breaker("C", 32), 160), 0.1);
    EXPECT_EQ(held(breaker("D", 32), 320), 0.1);
}

TEST(Hold, EveryDeviceHoldsItsRatingForAnHour) {
    for (const tables::Device& d : support::catalogue().devices) {
        EXPECT_GE(held(d, d.rating.number()), 3600) << d.standard << d.curve << d.rating.number();
    }
}

RC_GTEST_PROP(Hold, NoDeviceHoldsLongerThanItTakesToOperate, ()) {
    const auto& device = any_device();
    const double amps = any_current();
    RC_ASSERT(held(device, amps) <= operated(device, amps));
}

RC_GTEST_PROP(Hold, MoreCurrentIsNeverHeldLonger, ()) {
    const auto& device = any_device();
    const double amps = any_current();
    RC_ASSERT(held(device, amps * support::number_between(1, 3)) <= held(device, amps));
}

RC_GTEST_PROP(Hold, ALargerDeviceOfItsKindHoldsAtLeastAsLong, ()) {
    const auto& small = any_smaller_device();
    const auto& large = any_larger_than(small);
    const double amps = any_current();
    RC_ASSERT(held(large, amps) >= held(small, amps));
}

RC_GTEST_PROP(Hold, WritesWorkingThatHoldsAndGivesTheSameFigure, ()) {
    const auto& device = any_device();
    const double amps = any_current();
    Recording ledger;
    const auto i = ledger.stated({"I", "current"}, amperes(amps), "survey");
    const auto t = holding_time(ledger, {"t", "time"}, device, i);
    RC_ASSERT(t.value.number() == held(device, amps));
    for (const std::string& wrong : support::wrong_lines(ledger.lines())) RC_FAIL(wrong);
}

}  // namespace
}  // namespace toft::device
