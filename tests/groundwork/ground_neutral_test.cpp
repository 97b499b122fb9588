#include "groundwork/grounding.h"
#include "support/draws.h"
#include "support/random_jobs.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>

namespace toft::answer {
namespace {

using support::between;
using support::measured;
using support::number_between;

const LostNeutralWayAnswer& way(const LostNeutralAnswer& lost, const std::string& name) {
    for (const LostNeutralWayAnswer& w : lost.ways) {
        if (w.way == name) return w;
    }
    ADD_FAILURE() << name;
    return lost.ways.at(0);
}

LostNeutralAnswer lost_of(const site::Job& job) { return side_of(job).lost_neutral; }

constexpr const char* carry = "carry the supply earth";
constexpr const char* add = "carry it and add an electrode";
constexpr const char* own = "own electrode";

/// House's earth known as one figure, 60 A of load at most.
site::Job known_house(double earth_ohm) {
    site::Job job = support::plain_job();
    job.intake.earth_without_neutral = measured(ohms(earth_ohm));
    job.intake.demand = measured(amperes(60));
    job.buildings[1].load = measured(amperes(1e-9));
    return job;
}

TEST(LostNeutralAnswers, OnlyASupplyWithACombinedNeutralAndEarthLosesItsEarthSo) {
    site::Job job = support::plain_job();
    EXPECT_TRUE(lost_of(job).applies);
    job.intake.earthing = site::Earthing::tn_s;
    EXPECT_FALSE(lost_of(job).applies);
    EXPECT_TRUE(lost_of(job).ways.empty());
    job.intake.earthing = site::Earthing::tt;
    job.intake.ze = {};
    job.intake.electrode = measured(ohms(20));
    EXPECT_FALSE(lost_of(job).applies);
}

TEST(LostNeutralAnswers, CarriedItIsTheDividerOfLoadAndEarth) {
    // 60 A of load in series with 10 ohms of earth, from 230 V and up to a tenth more:
    // 230 x 1.1 x 10/(10 + 3.83).
    const LostNeutralAnswer lost = lost_of(known_house(10));
    EXPECT_NEAR(lost.load_w, 13800, 1e-4);
    EXPECT_NEAR(way(lost, carry).high_v, 1.1 * 230 * 10 / (10 + 230.0 / 60), 1e-6);
    EXPECT_EQ(lost.earth_known_by, "measured");
}

TEST(LostNeutralAnswers, WithoutLoadNoVolts) {
    for (const auto& w : lost_of(support::plain_job()).ways) {
        ASSERT_EQ(w.over_load.size(), 25u);
        EXPECT_EQ(w.over_load.front().load_w, 0);
        EXPECT_EQ(w.over_load.front().low_v, 0);
        EXPECT_EQ(w.over_load.front().high_v, 0);
        EXPECT_GE(w.over_load.back().load_w, 10000);
    }
}

TEST(LostNeutralAnswers, MarksOfOtherDutiesStandBesideButNothingIsMet) {
    const LostNeutralAnswer lost = lost_of(support::plain_job());
    EXPECT_EQ(lost.marks_v, (std::vector<double>{25, 50, 70}));
    for (const auto& w : lost.ways) {
        EXPECT_EQ(w.says.find("safe"), std::string::npos);
        EXPECT_FALSE(w.says.empty());
    }
}

TEST(LostNeutralAnswers, AStatedElectrodeDrainsTheHouseAndCarriesForIt) {
    const LostNeutralAnswer lost = lost_of(known_house(100));
    EXPECT_LT(way(lost, add).high_v, way(lost, carry).high_v);
    EXPECT_GT(way(lost, add).electrode_high_a, 1);
    EXPECT_EQ(way(lost, carry).electrode_high_a, 0);
    EXPECT_EQ(way(lost, own).electrode_high_a, 0);
}

TEST(LostNeutralAnswers, CurrentThroughTheElectrodeForHoursWarmsItsSoil) {
    site::Job job = known_house(100);
    const auto warm = way(lost_of(job), add);
    EXPECT_GT(warm.warmer_k, 0);
    job.intake.demand = measured(amperes(2));
    EXPECT_LT(way(lost_of(job), add).warmer_k, warm.warmer_k);
    EXPECT_EQ(way(lost_of(job), carry).warmer_k, 0);
}

TEST(LostNeutralAnswers, AKnownHouseEarthNarrowsThem) {
    site::Job job = support::plain_job();
    const LostNeutralAnswer open = lost_of(job);
    EXPECT_NE(open.earth_known_by.find("not stated"), std::string::npos);
    job.intake.earth_without_neutral = measured(ohms(12));
    const LostNeutralAnswer known = lost_of(job);
    for (std::size_t i = 0; i < open.ways.size(); ++i) {
        EXPECT_GE(known.ways[i].low_v, open.ways[i].low_v);
        EXPECT_LE(known.ways[i].high_v, open.ways[i].high_v);
    }
    EXPECT_LT(way(known, carry).high_v - way(known, carry).low_v,
              way(open, carry).high_v - way(open, carry).low_v);
}

TEST(LostNeutralAnswers, OnThreePhasesBalancedLoadMayLeaveNothing) {
    for (const auto& w : lost_of(support::on_three_phases(support::plain_job())).ways) {
        EXPECT_EQ(w.low_v, 0);
        EXPECT_GT(w.high_v, 0);
    }
}

TEST(LostNeutralAnswers, FartherFromTheHouseLessOfItsRiseArrives) {
    double before = 1e9;
    for (const double gap : {0.0, 1.0, 5.0, 20.0, 100.0}) {
        site::Job job = known_house(10);
        job.buildings[1].electrode.from_house_earth = measured(metres(gap));
        const double high = way(lost_of(job), own).high_v;
        EXPECT_LT(high, before);
        before = high;
    }
    EXPECT_LT(before, 10);
}

/// A random job on a supply that can lose its neutral.
site::Job any_job() {
    site::Job job = support::random_job(*rc::gen::arbitrary<unsigned>());
    job.intake.earthing = site::Earthing::tn_c_s;
    if (!job.intake.ze.known) job.intake.ze = measured(ohms(0.3));
    if (*rc::gen::arbitrary<bool>()) {
        const double low = number_between(0.5, 100);
        job.intake.earth_without_neutral = between(ohms(low), ohms(low * number_between(1, 20)));
    }
    return job;
}

RC_GTEST_PROP(LostNeutralLaws, MoreLoadNeverLowersTheUpperEnd, ()) {
    for (const LostNeutralWayAnswer& w : lost_of(any_job()).ways) {
        for (std::size_t i = 1; i < w.over_load.size(); ++i) {
            RC_ASSERT(w.over_load[i].load_w > w.over_load[i - 1].load_w);
            RC_ASSERT(w.over_load[i].high_v >= w.over_load[i - 1].high_v * (1 - 1e-9));
            RC_ASSERT(w.over_load[i].low_v <= w.over_load[i].high_v);
        }
    }
}

RC_GTEST_PROP(LostNeutralLaws, AnOwnElectrodeNeverMeetsMoreThanTheCarriedEarth, ()) {
    const LostNeutralAnswer lost = lost_of(any_job());
    RC_ASSERT(way(lost, own).high_v <= way(lost, carry).high_v * (1 + 1e-9));
    RC_ASSERT(way(lost, own).low_v <= way(lost, carry).low_v * (1 + 1e-9));
    RC_ASSERT(way(lost, add).high_v <= way(lost, carry).high_v * (1 + 1e-9));
}

RC_GTEST_PROP(LostNeutralLaws, LoadsThatKeepTheirPowerNeverLiftItLess, ()) {
    for (const LostNeutralWayAnswer& w : lost_of(any_job()).ways) {
        RC_ASSERT(w.stiff_v >= w.high_v * (1 - 1e-9));
    }
}

RC_GTEST_PROP(LostNeutralLaws, TheBandHoldsWhatAnyHouseEarthWithinItsRangeGives, ()) {
    site::Job job = any_job();
    const double low = number_between(0.5, 100);
    const double high = low * number_between(1, 20);
    job.intake.earth_without_neutral = between(ohms(low), ohms(high));
    const LostNeutralAnswer band = lost_of(job);
    job.intake.earth_without_neutral = measured(ohms(number_between(low, high)));
    const LostNeutralAnswer one = lost_of(job);
    for (std::size_t i = 0; i < band.ways.size(); ++i) {
        RC_ASSERT(one.ways[i].high_v <= band.ways[i].high_v * (1 + 1e-9));
        RC_ASSERT(one.ways[i].low_v >= band.ways[i].low_v * (1 - 1e-9));
        RC_ASSERT(one.ways[i].electrode_high_a <= band.ways[i].electrode_high_a * (1 + 1e-9));
    }
}

RC_GTEST_PROP(LostNeutralLaws, TheBandHoldsWhatAnySoilWithinItsRangeGives, ()) {
    site::Job job = any_job();
    const double low = number_between(20, 500);
    const double high = low * number_between(1, 20);
    job.ground.resistivity = between(ohm_metres(low), ohm_metres(high));
    const LostNeutralAnswer band = lost_of(job);
    all_year(job, number_between(low, high));
    const LostNeutralAnswer one = lost_of(job);
    for (std::size_t i = 0; i < band.ways.size(); ++i) {
        RC_ASSERT(one.ways[i].high_v <= band.ways[i].high_v * (1 + 1e-9));
        RC_ASSERT(one.ways[i].low_v >= band.ways[i].low_v * (1 - 1e-9));
    }
}

RC_GTEST_PROP(LostNeutralLaws, BodyCurrentsAreOrderedByHowBadTheConditionIs, ()) {
    for (const LostNeutralWayAnswer& w : lost_of(any_job()).ways) {
        RC_ASSERT(w.body.size() == 3u);  // shod and dry, barefoot on wet grass, wet skin
        for (const BodyAnswer& b : w.body) RC_ASSERT(b.low_ma <= b.high_ma);
        for (std::size_t i = 1; i < w.body.size(); ++i) {
            RC_ASSERT(w.body[i].high_ma >= w.body[i - 1].high_ma);
            RC_ASSERT(w.body[i].low_ma >= w.body[i - 1].low_ma);
        }
    }
}

}  // namespace
}  // namespace toft::answer
