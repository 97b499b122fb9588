#include "circuit/setting.h"

#include "circuit/circuits.h"

#include <gtest/gtest.h>

namespace toft::circuit {
namespace {

Circuits<Silent> prepared(const site::Job& job, int phases = 1) {
    Silent silent;
    return prepare(silent, support::catalogue(), job, job.buildings[1], phases);
}

TEST(CircuitSetting, ACircuitOfUnknownLengthIsLeftOutAndSaid) {
    site::Circuit c = heater(2000, 7);
    c.length = {};
    const auto circuits = prepared(job_with({c, heater(1000, 5)}));
    EXPECT_EQ(circuits.judged.size(), 1u);
    EXPECT_EQ(circuits.left_out,
              std::vector<std::string>{"circuit Heater is not judged: its length is not stated"});
    EXPECT_FALSE(circuits.all());
}

TEST(CircuitSetting, ThreePhasesNeedABoardOfThree) {
    site::Circuit c = heater(6000, 7);
    c.phases = 3;
    EXPECT_TRUE(prepared(job_with({c})).judged.empty());
    ASSERT_EQ(prepared(job_with({c}), 3).judged.size(), 1u);
    EXPECT_NEAR(prepared(job_with({c}), 3).judged[0].ib.number(), 6000 / 690.0, 1e-9);
}

// 433.1.204: a ring of 2.5 mm² at least behind 32 A. To a point half way round, both halves in
// parallel are a quarter of the whole.
TEST(CircuitSetting, ARingCountsAQuarterOfTheWayRoundAndHasTwoAndAHalfSquaresAtLeast) {
    const auto s = prepared(job_with({ring(40)})).judged.at(0);
    EXPECT_TRUE(s.ring);
    EXPECT_NEAR(s.length.number(), 10, 1e-12);
    for (const Option& option : s.options) {
        EXPECT_GE(option.cable->section.number(), 2.5);
        EXPECT_EQ(option.device->rating, amperes(32));
    }
    EXPECT_EQ(s.options.front().cable->section, square_millimetres(2.5));
}

// On-Site Guide: 20 A at the far point and 12 A along the ring lose as much as 26 A at the far
// point.
TEST(CircuitSetting, TheDropOfARingGoesByTwentySixAmperes) {
    EXPECT_NEAR(prepared(job_with({ring(40)})).judged.at(0).drop_current.number(), 26, 1e-12);
}

TEST(CircuitSetting, ALengthStatedForARingIsTheWayToItsFarPoint) {
    site::Circuit c = ring(40);
    c.loop_length = {};
    c.length = support::measured(metres(20));
    EXPECT_NEAR(prepared(job_with({c})).judged.at(0).length.number(), 10, 1e-12);
}

TEST(CircuitSetting, OptionsRiseInSectionAndTheDeviceCarriesTheLoad) {
    const auto s = prepared(job_with({heater(3000, 12)})).judged.at(0);
    for (std::size_t i = 0; i < s.options.size(); ++i) {
        EXPECT_GE(s.options[i].device->rating, amperes(16));
        EXPECT_EQ(s.options[i].device->kind, tables::Kind::rcbo);
        if (i == 0) continue;
        EXPECT_GE(s.options[i].cable->section, s.options[i - 1].cable->section);
    }
    EXPECT_EQ(s.options.front().device->rating, amperes(16));
}

TEST(CircuitSetting, WhatIsStatedIsTaken) {
    site::Circuit c = heater(3000, 12);
    c.device = site::NamedDevice{"BS EN 60898", "C", amperes(20)};
    c.cable = site::CircuitCable{"flat twin and earth", square_millimetres(4), {}};
    const auto stated = prepared(job_with({c})).judged.at(0).options;
    for (const Option& option : stated) {
        EXPECT_EQ(option.device->curve, "C");
        EXPECT_EQ(option.device->rating, amperes(20));
        EXPECT_EQ(option.cable->section, square_millimetres(4));
    }
    c.cable->live = square_millimetres(3);
    EXPECT_EQ(prepared(job_with({c})).left_out.size(), 1u);
}

// The effective current of a welder goes with the root of its duty.
TEST(CircuitSetting, AWelderAtAQuarterOfItsTimeHeatsLikeHalfItsCurrent) {
    site::Circuit c = heater(4600, 9);
    c.kind = site::CircuitKind::welder;
    c.duty_percent = support::measured(25.0);
    const auto s = prepared(job_with({c})).judged.at(0);
    EXPECT_NEAR(s.ib.number(), 10, 1e-9);
    EXPECT_NEAR(s.drop_current.number(), 20, 1e-9);
}

TEST(CircuitSetting, AMotorBehindADriveDoesNotStartDirect) {
    site::Circuit c = saw(1500, 6, 9);
    EXPECT_EQ(prepared(job_with({c})).judged.at(0).duty, Duty::starts);
    c.drive = site::Answer::yes;
    EXPECT_EQ(prepared(job_with({c})).judged.at(0).duty, Duty::load);
}

TEST(CircuitSetting, PanelsGenerate) {
    site::Circuit c = heater(3600, 9);
    c.kind = site::CircuitKind::solar;
    EXPECT_EQ(prepared(job_with({c})).judged.at(0).duty, Duty::generates);
}

// Nobody states how deep a circuit lies nor how warm its surroundings are: as for a leg of the
// run the worse end of the range counts, and what is said of the ground is taken.
TEST(CircuitSetting, WhatNobodySaysOfItsSurroundingsIsReadAtTheWorseEnd) {
    const auto& c = support::catalogue();
    const auto worse = [&](const char* fact) { return find_open_range(c, fact)->high.value; };
    site::Circuit heat = heater(3000, 12);
    EXPECT_EQ(prepared(job_with({heat})).judged.at(0).surroundings,
              celsius(worse("air_temperature")));
    heat.cable = site::CircuitCable{"armoured XLPE copper", square_millimetres(4), {}};
    heat.method = site::LegMethod::buried_direct;
    site::Job job = job_with({heat});
    job.ground.temperature = {};
    EXPECT_EQ(prepared(job).judged.at(0).surroundings, celsius(worse("ground_temperature")));
    job.ground.temperature = support::measured(celsius(12));
    EXPECT_EQ(prepared(job).judged.at(0).surroundings, celsius(12));
    const double dry = prepared(job).judged.at(0).factors.total;
    job.ground.thermal_resistivity = support::measured(1.0);
    EXPECT_GT(prepared(job).judged.at(0).factors.total, dry);
}

}  // namespace
}  // namespace toft::circuit
