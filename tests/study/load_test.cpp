#include "study/setting_parts.h"

#include "support/jobs.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace toft::study {
namespace {

using support::measured;
using support::prepared;

site::Circuit circuit(site::CircuitKind kind, double watts, double power_factor) {
    site::Circuit c;
    c.name = "circuit";
    c.kind = kind;
    c.load_w = measured(watts);
    c.power_factor = measured(power_factor);
    return c;
}

site::Job job_of(std::vector<site::Circuit> circuits) {
    site::Job job = support::plain_job();
    site::Building& shed = job.buildings[1];
    shed.load = {};
    shed.power_factor = {};
    shed.circuits = std::move(circuits);
    return job;
}

bool assumes(const Setting<Silent>& setting, const std::string& words) {
    return std::any_of(setting.assumed.begin(), setting.assumed.end(),
                       [&](const std::string& s) { return s.find(words) != std::string::npos; });
}

TEST(Load, StatedAmperesAreTheDesignCurrent) {
    const site::Job job = support::plain_job();
    EXPECT_EQ(prepared(job).ib, amperes(20));
}

TEST(Load, LaterLoadIsAddedToThePresentOne) {
    site::Job job = support::plain_job();
    job.buildings[1].future_load = measured(amperes(8));
    EXPECT_EQ(prepared(job).ib, amperes(28));
}

TEST(Load, WattsAtAPowerFactorDrawMoreThanWattsOverVolts) {
    site::Job job = support::plain_job();
    job.buildings[1].load = {};
    job.buildings[1].load_w = measured(4600.0);
    job.buildings[1].power_factor = measured(0.8);
    EXPECT_NEAR(prepared(job).ib.number(), 4600 / 0.8 / 230, 1e-12);
    EXPECT_EQ(prepared(job).power_factor, 0.8);
}

TEST(Load, APowerFactorThatNobodyStatedIsSaidToBeAssumed) {
    site::Job job = support::plain_job();
    job.buildings[1].load = {};
    job.buildings[1].load_w = measured(4600.0);
    job.buildings[1].power_factor = {};
    EXPECT_NEAR(prepared(job).ib.number(), 20, 1e-12);
    EXPECT_TRUE(assumes(prepared(job), "power factor not stated"));
}

TEST(Load, AMotorOfUnreadPowerFactorIsTakenAtOneAndThatIsSaid) {
    site::Job job = support::plain_job();
    site::Circuit saw;
    saw.name = "Saw";
    saw.kind = site::CircuitKind::motor;
    saw.load_w = measured(2200.0);
    job.buildings[1].load = {};
    job.buildings[1].circuits = {saw};
    EXPECT_TRUE(assumes(prepared(job), "Saw: a motor whose power factor is not stated"));
    job.buildings[1].circuits[0].power_factor = measured(0.8);
    EXPECT_FALSE(assumes(prepared(job), "a motor whose power factor"));
    job.buildings[1].circuits[0].power_factor = {};
    job.buildings[1].circuits[0].kind = site::CircuitKind::fixed_load;
    EXPECT_FALSE(assumes(prepared(job), "a motor whose power factor"));
}

TEST(Load, EverythingAtOnceIsAllCircuitsWithoutDiversityAndThatIsSaid) {
    site::Circuit sockets;
    sockets.kind = site::CircuitKind::socket_radial;
    sockets.device = site::NamedDevice{"BS EN 60898", "B", amperes(20)};
    site::Job job = job_of({circuit(site::CircuitKind::motor, 1840, 0.8), sockets});
    job.wishes.scenario = site::Scenario::everything;
    EXPECT_NEAR(prepared(job).ib.number(), 1840 / 0.8 / 230 + 20, 1e-12);
    EXPECT_TRUE(assumes(prepared(job), "without diversity"));
}

TEST(Load, OrdinarilyTheRunIsSizedForWhatIsLikelyWithPublishedAllowances) {
    site::Job job = job_of({circuit(site::CircuitKind::socket_ring, 4600, 1),
                            circuit(site::CircuitKind::socket_radial, 2300, 1)});
    EXPECT_NEAR(prepared(job).ib.number(), 20 + 0.4 * 10, 1e-12);
    EXPECT_TRUE(assumes(prepared(job), "as likely"));
    EXPECT_TRUE(assumes(prepared(job), "100 % of the largest and 40 % of the others"));
    job.buildings[1].circuits[1].later = site::Answer::yes;
    EXPECT_NEAR(prepared(job).ib.number(), 24, 1e-12);
    job.wishes.scenario = site::Scenario::today;
    EXPECT_NEAR(prepared(job).ib.number(), 20, 1e-12);
    job.wishes.scenario = site::Scenario::everything;
    EXPECT_NEAR(prepared(job).ib.number(), 30, 1e-12);
}

TEST(Load, WhatGivesCurrentAddsNothingToTheLoadButTheRunCarriesTheGreater) {
    site::Job job = job_of(
        {circuit(site::CircuitKind::kiln, 2300, 1), circuit(site::CircuitKind::solar, 3680, 1)});
    EXPECT_NEAR(prepared(job).ib.number(), 16, 1e-12);
    job.buildings[1].circuits[0].load_w = measured(4600.0);
    EXPECT_NEAR(prepared(job).ib.number(), 20, 1e-12);
    EXPECT_NEAR(prepared(job).power_factor, 1, 1e-12);
    EXPECT_TRUE(assumes(prepared(job), "gives current"));
}

TEST(Load, ThirdHarmonicsOfEvenLinesComeBackOnTheNeutral) {
    site::Circuit lamps = circuit(site::CircuitKind::kiln, 6900, 1);
    lamps.phases = 3;
    lamps.third_harmonic = measured(30.0);
    const site::Job job = support::on_three_phases(job_of({lamps}));
    EXPECT_NEAR(prepared(job).neutral_share, 0.9, 1e-12);
}

TEST(Load, ThirdHarmonicsLowerWhatTheRunMayCarryAndWithoutThemNothingDoes) {
    site::Circuit lamps = circuit(site::CircuitKind::kiln, 6900, 1);
    lamps.phases = 3;
    EXPECT_FALSE(prepared(support::on_three_phases(job_of({lamps}))).harmonics);
    EXPECT_TRUE(assumes(prepared(support::on_three_phases(job_of({lamps}))), "third harmonic"));
    lamps.third_harmonic = measured(30.0);
    const site::Job job = support::on_three_phases(job_of({lamps}));
    EXPECT_TRUE(prepared(job).harmonics);
    EXPECT_NEAR(prepared(job).harmonic_factor, 0.86, 1e-12);
    EXPECT_FALSE(assumes(prepared(job), "third harmonic"));
}

// Half of the load has 60 %: 30 % of each line.
TEST(Load, TheShareOfTheRunIsThatOfAllItsCircuitsTogether) {
    site::Circuit lamps = circuit(site::CircuitKind::kiln, 6900, 1);
    lamps.phases = 3;
    site::Circuit heat = lamps;
    lamps.third_harmonic = measured(60.0);
    const site::Job job = support::on_three_phases(job_of({lamps, heat}));
    EXPECT_NEAR(prepared(job).neutral_share, 0.9, 1e-12);
    EXPECT_NEAR(prepared(job).harmonic_factor, 0.86, 1e-12);
}

TEST(Load, OnOnePhaseTheNeutralCarriesWhatTheLineDoesAndNoFactorApplies) {
    site::Circuit lamps = circuit(site::CircuitKind::kiln, 2300, 1);
    lamps.third_harmonic = measured(30.0);
    EXPECT_FALSE(prepared(job_of({lamps})).harmonics);
}

TEST(Load, TheWholeHasThePowerFactorOfItsParts) {
    const site::Job job = job_of({circuit(site::CircuitKind::motor, 800, 0.8),
                                  circuit(site::CircuitKind::fixed_load, 1000, 1)});
    EXPECT_NEAR(prepared(job).power_factor, 1800.0 / 2000.0, 1e-12);
}

TEST(Load, LightsMakeTheDropAllowanceTheTighter) {
    site::Job lights = job_of({circuit(site::CircuitKind::lighting, 200, 1)});
    lights.wishes.drop_run = measured(4.0);
    EXPECT_EQ(prepared(lights).drop_limit, 3);
    site::Job heat = job_of({circuit(site::CircuitKind::fixed_load, 200, 1)});
    heat.wishes.drop_run = measured(4.0);
    EXPECT_EQ(prepared(heat).drop_limit, 4);
}

TEST(Load, NoWishLiftsTheRunAboveWhatAnyLoadMayLose) {
    site::Job job = support::plain_job();
    job.wishes.drop_run = measured(9.0);
    EXPECT_EQ(prepared(job).drop_limit, 5);
}

}  // namespace
}  // namespace toft::study
