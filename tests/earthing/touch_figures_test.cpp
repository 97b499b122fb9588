#include "earthing/touch_figures.h"

#include "study/path.h"
#include "support/catalogue.h"
#include "support/draws.h"
#include "support/jobs.h"
#include "support/working.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>

namespace toft::study {
namespace {

using shock::TouchRange;
using support::between;
using support::measured;

TouchFigures<Silent> met(const site::Job& job, const RunScheme& scheme) {
    Silent ledger;
    const auto setting = support::prepared(job);
    Figures<Silent> figures;
    work_out(ledger, setting, scheme, Stage::heat, figures);
    return touch_figures(ledger, setting, scheme, figures);
}

RunScheme carried() {
    return support::scheme(support::cable(3, 10), Protective::core, support::fuse(32));
}

RunScheme on_own_electrode() {
    RunScheme s = support::scheme(support::cable(2, 10), Protective::armour, support::fuse(32));
    s.earthing = BuildingEarthing::own_electrode;
    return s;
}

class MetVolts : public ::testing::Test {
protected:
    /// The own electrode reads this at its worst.
    void electrode(double ohm) {
        job_.buildings[1].electrode.resistance = between(ohms(ohm), ohms(ohm));
    }
    site::Job job_ = support::plain_job();
};

TEST_F(MetVolts, OnTheSuppliesEarthTheFaultTimesTheProtectivePath) {
    // 30 m of three cores of 10 mm2 at 20 degrees: 1.83 mohm/m each way (IEC 60228), and an
    // external loop of 0.2 ohm, at 1.1 times 230 V. The angle of the external loop is not known: at
    // most current it stands square on the resistance of the run.
    const auto t = met(job_, carried());
    const double path = 30 * 0.00183;
    const double fault = 1.1 * 230 / std::hypot(0.2, 2 * path);
    EXPECT_FALSE(t.own_electrode);
    EXPECT_NEAR(t.outbuilding.number() / (fault * path), 1, 0.01);
}

TEST_F(MetVolts, AreTheFaultTimesTheWholePathOverEveryStretch) {
    site::Job job = support::job_with_legs({support::plain_leg(site::LegMethod::buried_direct),
                                            support::plain_leg(site::LegMethod::buried_direct)});
    support::name_cable(job.runs[0].legs[0], support::cable(3, 16));
    support::name_cable(job.runs[0].legs[1], support::cable(5, 10));
    RunScheme two = support::scheme({support::stretch(support::cable(3, 16), Protective::core),
                                     support::stretch(support::cable(5, 10), Protective::core)},
                                    support::fuse(32));
    Silent ledger;
    const auto setting = support::prepared(job);
    ASSERT_EQ(setting.stretches.size(), 2u);
    Figures<Silent> figures;
    work_out(ledger, setting, two, Stage::heat, figures);
    const auto t = touch_figures(ledger, setting, two, figures);
    const auto near = fault_path(ledger, setting, two.stretch[0], {Heat::cold, metres(30), 1});
    const auto far = fault_path(ledger, setting, two.stretch[1], {Heat::cold, metres(30), 2});
    const Ohms whole = magnitude(near.serving + far.serving);
    EXPECT_NEAR(t.outbuilding.number(), (figures.le_far * whole).number(), 1e-9);
}

TEST_F(MetVolts, TheHouseRisesByTheNeutralsPartOfTheLoop) {
    const auto t = met(job_, carried());
    Silent ledger;
    const auto setting = support::prepared(job_);
    Figures<Silent> figures;
    work_out(ledger, setting, carried(), Stage::heat, figures);
    const double line = support::catalogue().limits.line_share.value;
    EXPECT_NEAR(t.house.number(), figures.le_far.number() * 0.2 * (1 - line), 1e-9);
    EXPECT_GT(t.house.number(), 0);
}

TEST_F(MetVolts, OnTtTheHouseRisesByItsElectrode) {
    job_.intake.earthing = site::Earthing::tt;
    job_.intake.ze = {};
    job_.intake.electrode = measured(ohms(90));
    const auto t = met(job_, carried());
    EXPECT_GT(t.house.number(), 150);
    EXPECT_LE(t.house.number(), 1.1 * 230);
}

TEST_F(MetVolts, NoEarthRisesFurtherThanTheSourceDrivesIt) {
    // Nothing known of the supply: its greatest electrode and its greatest fault current belong to
    // different houses.
    job_.intake.earthing = site::Earthing::tt;
    job_.intake.ze = {};
    job_.intake.electrode = {};
    const auto t = met(job_, carried());
    EXPECT_NEAR(t.house.number(), 1.1 * 230, 1e-9);
}

RC_GTEST_PROP(MetVoltsLaw, ALongerRunNeverLowersThoseAtTheOutbuilding, ()) {
    const double shorter = support::number_between(2, 200);
    const double longer = shorter * support::number_between(1, 3);
    const auto at = [](double length) {
        site::Job job =
            support::job_with_legs({support::plain_leg(site::LegMethod::buried_direct, length)});
        return met(job, carried()).outbuilding.number();
    };
    RC_ASSERT(at(longer) >= at(shorter) * (1 - 1e-12));
}

TEST_F(MetVolts, LastAsLongAsTheDeviceTakesOrTheResidualDeviceIfThatIsQuicker) {
    Silent ledger;
    RunScheme s = carried();
    const auto setting = support::prepared(job_);
    Figures<Silent> figures;
    work_out(ledger, setting, s, Stage::heat, figures);
    EXPECT_EQ(touch_figures(ledger, setting, s, figures).lasts, figures.disconnection);
    s.rcd = &support::catalogue().run_rcds.front();
    EXPECT_LE(touch_figures(ledger, setting, s, figures).lasts, figures.disconnection);
    EXPECT_LE(touch_figures(ledger, setting, s, figures).lasts, s.rcd->longest.value);
}

TEST_F(MetVolts, AFaultThatNothingClearsLastsForEver) {
    job_.intake.ze = measured(ohms(100));
    EXPECT_TRUE(std::isinf(met(job_, carried()).lasts.number()));
}

TEST_F(MetVolts, OnItsOwnElectrodeNearlyTheWholeVoltageStandsOnTheRod) {
    electrode(100);
    const auto t = met(job_, on_own_electrode());
    EXPECT_TRUE(t.own_electrode);
    EXPECT_NEAR(t.outbuilding.number(), 230 * 100 / 100.2, 1e-6);
    EXPECT_NEAR(t.house.number(), 230 * 0.2 / 100.2, 1e-6);
}

TEST_F(MetVolts, TheResidualDeviceOfTheBoardClearsIt) {
    // BS EN 61008/61009 as reprinted: 300 ms at its rating, 40 ms from five times that. 2.3 A and
    // 92 mA through a device of 30 mA.
    electrode(100);
    EXPECT_NEAR(met(job_, on_own_electrode()).lasts.number(), 0.04, 1e-12);
    electrode(2500);
    EXPECT_NEAR(met(job_, on_own_electrode()).lasts.number(), 0.3, 1e-12);
}

TEST_F(MetVolts, BelowItsRatingNothingClearsIt) {
    electrode(230 / 0.031);
    EXPECT_TRUE(std::isfinite(met(job_, on_own_electrode()).lasts.number()));
    electrode(230 / 0.029);
    const auto t = met(job_, on_own_electrode());
    EXPECT_TRUE(std::isinf(t.lasts.number()));
    EXPECT_GT(t.outbuilding.number(), 220);
    const auto& shock = support::catalogue().shock;
    EXPECT_EQ(shock::touch_verdict(shock, tables::TouchCurve::dry, t.outbuilding, t.lasts),
              shock::TouchVerdict::beyond);
}

TEST_F(MetVolts, WhatIsMetIsHeldAgainstBothCurves) {
    electrode(100);
    const auto t = met(job_, on_own_electrode());
    // IEC TR 61200-413, from memory: 0.17 s dry and 0.035 s wet at 220 V.
    EXPECT_EQ(t.dry.range, TouchRange::limited);
    EXPECT_LT(t.dry.time.number(), 0.17);
    EXPECT_LT(t.wet.time.number(), 0.035);
    EXPECT_LT(t.wet.time, t.dry.time);
}

TEST_F(MetVolts, PastTheCurveItsLastTimeIsAnUpperBoundOnly) {
    job_.intake.u0 = volts(300);  // past 280 V, where the wet curve ends
    electrode(1000);
    const auto t = met(job_, on_own_electrode());
    EXPECT_EQ(t.wet.range, TouchRange::past_curve);
    EXPECT_NEAR(t.wet.time.number(), 0.02, 1e-12);
    const auto& shock = support::catalogue().shock;
    EXPECT_EQ(shock::touch_verdict(shock, tables::TouchCurve::wet, t.outbuilding, seconds(0.01)),
              shock::TouchVerdict::beyond)
        << "nothing counts as inside there";
}

TEST_F(MetVolts, LittleVoltageHasNoTimeSet) {
    site::Job job = support::job_with_legs({support::plain_leg(site::LegMethod::buried_direct, 1)});
    job.intake.ze = measured(ohms(0.8));
    const auto t = met(job, carried());
    EXPECT_LT(t.outbuilding.number(), 25);
    EXPECT_EQ(t.wet.range, TouchRange::unlimited);
    EXPECT_TRUE(std::isinf(t.wet.time.number()));
}

RC_GTEST_PROP(MetVoltsLaw, WrittenOutOrNotTheyAreTheSame, ()) {
    const auto drawn = *support::any_drawn();
    const site::Job job = support::job_of(drawn);
    RunScheme scheme = support::scheme_of(drawn);
    if (*rc::gen::arbitrary<bool>()) scheme.earthing = BuildingEarthing::own_electrode;
    const auto silent = met(job, scheme);
    Recording ledger;
    const auto setting = prepare(ledger, support::catalogue(), job, 0, Corner{});
    Figures<Recording> figures;
    work_out(ledger, setting, scheme, Stage::heat, figures);
    const auto written = touch_figures(ledger, setting, scheme, figures);
    RC_ASSERT(written.outbuilding.value == silent.outbuilding);
    RC_ASSERT(written.house.value == silent.house);
    RC_ASSERT(written.lasts.value == silent.lasts);
    RC_ASSERT(written.dry.range == silent.dry.range);
    RC_ASSERT(written.wet.time.value == silent.wet.time);
    for (const std::string& wrong : support::wrong_lines(ledger.lines())) RC_FAIL(wrong);
}

}  // namespace
}  // namespace toft::study
