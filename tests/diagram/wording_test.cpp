#include "diagram/wording.h"

#include "support/jobs.h"

#include <gtest/gtest.h>

namespace toft::diagram {
namespace {

TEST(Wording, AFactSaysWhetherItIsKnownAndHow) {
    EXPECT_EQ(fact_words(site::Fact<Ohms>{}, "Ω"), "not known");
    EXPECT_EQ(fact_words(support::measured(ohms(0.21)), "Ω"), "0.21 Ω");
    EXPECT_EQ(fact_words(support::between(ohms(0.2), ohms(0.3)), "Ω"), "0.2 to 0.3 Ω, assumed");
    EXPECT_EQ(fact_words(support::measured(amperes(1100)), "kA", 1e-3), "1.1 kA");
    EXPECT_EQ(fact_words(support::measured(1500.0), "W"), "1500 W");
}

TEST(Wording, RangesOfFaultCurrentHaveOneUnit) {
    EXPECT_EQ(range_words({569.47, 1071.04}), "0.569 to 1.07 kA");
    EXPECT_EQ(range_words({215, 570}), "215 to 570 A");
    EXPECT_EQ(range_words({610, 610}), "610 A");
}

TEST(Wording, Devices) {
    EXPECT_EQ(rating_words("BS EN 60898", "B", 32), "32 A type B BS EN 60898");
    EXPECT_EQ(rating_words("BS 88-3", "", 80), "80 A BS 88-3");
    EXPECT_EQ(residual_words({100, "A", true, {}}), "100 mA, type A, delayed");
    EXPECT_EQ(residual_words({30, "A", false, {}}), "30 mA, type A");
}

TEST(Wording, LegsSayLengthMethodAndDepth) {
    site::Leg leg = support::plain_leg(site::LegMethod::buried_direct, 21);
    leg.surface = site::Surface::lawn;
    EXPECT_EQ(leg_words(leg), "21 m buried direct under lawn, 0.6 m deep");
    leg.depth = {};
    EXPECT_EQ(leg_words(leg), "21 m buried direct under lawn, depth not known");
    EXPECT_EQ(leg_words(support::plain_leg(site::LegMethod::clipped, 7)), "7 m clipped");
    site::Leg hung = support::plain_leg(site::LegMethod::overhead, 18);
    hung.surface = site::Surface::drive;
    hung.height = support::measured(metres(5.8));
    EXPECT_EQ(leg_words(hung), "18 m overhead over drive, 5.8 m high");
    hung.height = {};
    EXPECT_EQ(leg_words(hung), "18 m overhead over drive, height not known");
    EXPECT_EQ(rating_words("BS EN 60947-2", "TM", 125), "125 A BS EN 60947-2");
}

TEST(Wording, SupplyOfOneAndOfThreePhases) {
    site::Intake in;
    EXPECT_EQ(supply_words(in), "single-phase 230 V");
    in.phases = 3;
    EXPECT_EQ(supply_words(in), "three-phase 230/400 V");
}

}  // namespace
}  // namespace toft::diagram
