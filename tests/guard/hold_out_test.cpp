#include "guard/hold_out.h"

#include "guard/guarding.h"

namespace toft::guard {
namespace {

const tables::Device& fuse(double rating) { return support::fuse(rating); }
const tables::Device& breaker(double rating) { return support::breaker("B", rating); }

TEST(HoldOut, TheSurveysDeviceIsFoundInTheTables) {
    const auto& catalogue = support::catalogue();
    const tables::Device* found = find_device(catalogue, {"BS EN 60898", "B", amperes(16)});
    ASSERT_NE(found, nullptr);
    EXPECT_EQ(found->rating, amperes(16));
    EXPECT_EQ(find_device(catalogue, {"BS EN 60898", "B", amperes(17)}), nullptr);
}

TEST(HoldOut, ADeviceCarriesItsRatingAndNoMoreIsPromised) {
    EXPECT_TRUE(carries(fuse(32), amperes(32)));
    EXPECT_FALSE(carries(fuse(32), amperes(33)));
}

// Gates of gG fuses, IEC 60269-1 Table 3 as remembered: a 100 A fuse holds 820 A for 0.1 s.
TEST(HoldOut, AFuseHoldsUpToItsGate) {
    EXPECT_TRUE(holds_out(fuse(100), seconds(0.1), amperes(820)));
    EXPECT_FALSE(holds_out(fuse(100), seconds(0.1), amperes(830)));
    EXPECT_FALSE(holds_out(fuse(32), seconds(0.1), amperes(820)));
}

TEST(HoldOut, AHundredAmpereFuseOutlastsASmallBreakerInASmallShort) {
    EXPECT_TRUE(holds_out(fuse(100), breaker(16), amperes(600)));
    EXPECT_FALSE(holds_out(fuse(100), breaker(16), kiloamperes(6)));
}

TEST(HoldOut, NoDeviceOutlastsItsEqual) {
    EXPECT_FALSE(holds_out(fuse(32), fuse(32), amperes(500)));
    EXPECT_FALSE(holds_out(breaker(32), breaker(32), amperes(500)));
}

TEST(HoldOut, WhatHoldsALargeShortHoldsASmallerOne) {
    for (const double most : {3000.0, 1200.0, 600.0, 300.0, 100.0}) {
        if (!holds_out(fuse(100), breaker(16), amperes(most))) continue;
        EXPECT_TRUE(holds_out(fuse(100), breaker(16), amperes(most * 0.7))) << most;
    }
}

}  // namespace
}  // namespace toft::guard
