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

SeparationAnswer apart(const site::Job& job) { return separation_answer(Prepared(job).facts()); }

site::Metalwork pipe(site::Answer broken, site::Answer bonded) {
    site::Metalwork m;
    m.what = site::Metal::water_pipe;
    m.insulating_section = broken;
    m.bonded_at_house = bonded;
    return m;
}

TEST(Separation, APlainShedFarFromTheHouseIsAnIsland) {
    const SeparationAnswer s = apart(support::plain_job());  // 20 m off, surveyed, nothing enters
    EXPECT_TRUE(s.island);
    EXPECT_TRUE(s.bridges.empty());
    EXPECT_NEAR(s.distance_m, 20, 1e-12);
    EXPECT_NEAR(s.allowed, 50.0 / 230, 1e-12);
}

TEST(Separation, ABondedPipeIsABridgeAndNoIsland) {
    site::Job job = support::plain_job();
    job.buildings[1].metalwork = {pipe(site::Answer::no, site::Answer::yes)};
    const SeparationAnswer s = apart(job);
    EXPECT_FALSE(s.island);
    ASSERT_EQ(s.bridges.size(), 1u);
    EXPECT_TRUE(s.bridges[0].joins);
    EXPECT_EQ(s.bridges[0].what, "water pipe");
}

TEST(Separation, AnInsulatingSectionBreaksIt) {
    site::Job job = support::plain_job();
    job.buildings[1].metalwork = {pipe(site::Answer::yes, site::Answer::yes)};
    EXPECT_TRUE(apart(job).island);
}

TEST(Separation, WhatNobodyKnowsNeverReadsAsApart) {
    site::Job job = support::plain_job();
    job.buildings[1].metalwork = {pipe(site::Answer::unknown, site::Answer::unknown)};
    EXPECT_FALSE(apart(job).island) << "the pipe may be bonded";
    job.buildings[1].metalwork.clear();
    job.buildings[1].metalwork_surveyed = false;
    EXPECT_FALSE(apart(job).island) << "nobody has looked what enters";
    job = support::plain_job();
    job.buildings[1].reach_of_house_earth = {};
    job.buildings[1].electrode.from_house_earth = {};
    const SeparationAnswer s = apart(job);
    EXPECT_FALSE(s.island) << "nobody has looked how near the house's earth is";
    EXPECT_EQ(s.distance_m, 0);
    EXPECT_NEAR(s.transferred_high, 1, 1e-12);
    ASSERT_EQ(s.bridges.size(), 1u);
    EXPECT_NE(s.bridges[0].says.find("nobody has looked"), std::string::npos);
}

TEST(Separation, WithinArmsReachBothAreTouchedAtOnce) {
    site::Job job = support::plain_job();
    job.buildings[1].reach_of_house_earth = measured(metres(2));
    EXPECT_FALSE(apart(job).island);
    job.buildings[1].reach_of_house_earth = measured(metres(3));
    EXPECT_TRUE(apart(job).island);
}

TEST(Separation, WhatStandsOutOfReachIsSaidAndJoinsNothing) {
    site::Job job = support::plain_job();
    site::Metalwork fence = pipe(site::Answer::unknown, site::Answer::unknown);
    fence.distance = measured(metres(6));
    job.buildings[1].metalwork = {fence};
    const SeparationAnswer s = apart(job);
    EXPECT_TRUE(s.island);
    ASSERT_EQ(s.bridges.size(), 1u);
    EXPECT_FALSE(s.bridges[0].joins);
    EXPECT_NEAR(s.bridges[0].distance_m.value_or(0), 6, 1e-12);
}

TEST(Separation, WhereNoNeutralCanBeLostNoDistanceIsWanted) {
    for (const auto system : {site::Earthing::tn_s, site::Earthing::tt}) {
        site::Job job = support::plain_job();
        job.intake.earthing = system;
        job.intake.electrode = measured(ohms(20));
        const SeparationAnswer s = apart(job);
        EXPECT_EQ(s.needed_m, 0);
        EXPECT_EQ(s.lift_v, 0);
        EXPECT_NEAR(s.distance_m, 20, 1e-12);
    }
}

TEST(Separation, TheHouseIsTheHalfBallOfItsOhms) {
    site::Job job = support::plain_job();
    all_year(job, 100);
    job.intake.earth_without_neutral = measured(ohms(10));
    const SeparationAnswer s = apart(job);
    EXPECT_NEAR(s.house_radius_m, 100 / (2 * M_PI * 10), 1e-9);
    // The share of a bound that real electrodes keep under: 1/root(1 + (20 m/1.59 m)^2).
    EXPECT_NEAR(s.transferred_high, 1 / std::hypot(1, 20 / s.house_radius_m), 1e-9);
    EXPECT_NEAR(s.transferred_low, s.transferred_high, 1e-12);
}

TEST(Separation, EverySoilThatReadingsAllowIsAllowedFor) {
    // Two readings: anywhere from 100 to 1200 ohm metres, the worst of which lifts most.
    site::Job read = support::plain_job();
    read_pins(read, {{1, 400 / (2 * M_PI)}, {2, 300 / (4 * M_PI)}});
    site::Job stated = support::plain_job();
    stated.ground.resistivity = between(ohm_metres(100), ohm_metres(1200));
    EXPECT_NEAR(apart(read).lift_v / apart(stated).lift_v, 1, 1e-6);
    EXPECT_NEAR(apart(read).transferred_high / apart(stated).transferred_high, 1, 1e-6);
    EXPECT_NEAR(apart(read).transferred_low / apart(stated).transferred_low, 1, 1e-6);
}

RC_GTEST_PROP(SeparationLaws, NoSoilOrHouseWithinTheRangesTransfersMore, ()) {
    site::Job job = support::plain_job();
    const double rho = number_between(20, 1000);
    const double wide = rho * number_between(1, 10);
    const double re = number_between(0.5, 100);
    const double more = re * number_between(1, 10);
    job.ground.resistivity = between(ohm_metres(rho), ohm_metres(wide));
    job.intake.earth_without_neutral = between(ohms(re), ohms(more));
    const SeparationAnswer band = apart(job);
    all_year(job, number_between(rho, wide));
    job.intake.earth_without_neutral = measured(ohms(number_between(re, more)));
    const SeparationAnswer one = apart(job);
    RC_ASSERT(one.transferred_high <= band.transferred_high * (1 + 1e-9));
    RC_ASSERT(one.transferred_low >= band.transferred_low * (1 - 1e-9));
    RC_ASSERT(one.house_radius_m <= band.house_radius_m * (1 + 1e-9));
    RC_ASSERT(one.lift_v <= band.lift_v * (1 + 1e-9));
    RC_ASSERT(one.needed_m <= band.needed_m * (1 + 1e-9));
}

RC_GTEST_PROP(SeparationLaws, NothingForgottenMakesAnIsland, ()) {
    const site::Job before = support::random_job(*rc::gen::arbitrary<unsigned>());
    site::Job after = before;
    site::Building& b = after.buildings[1];
    switch (*rc::gen::inRange(0, 4)) {
        case 0:
            b.reach_of_house_earth = {};
            break;
        case 1:
            b.metalwork_surveyed = false;
            b.metalwork.clear();
            break;
        case 2:
            for (auto& m : b.metalwork) m.insulating_section = {};
            break;
        default:
            for (auto& m : b.metalwork) m.bonded_at_house = {};
            break;
    }
    RC_ASSERT(!apart(after).island || apart(before).island);
}

RC_GTEST_PROP(SeparationLaws, AnIslandHasNoBridge, ()) {
    const SeparationAnswer s = apart(support::random_job(*rc::gen::arbitrary<unsigned>()));
    for (const BridgeAnswer& b : s.bridges) {
        RC_ASSERT(!b.what.empty() && !b.says.empty());
        if (s.island) RC_ASSERT(!b.joins);
    }
}

}  // namespace
}  // namespace toft::answer
