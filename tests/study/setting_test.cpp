#include "study/setting.h"

#include "study/figures.h"
#include "support/catalogue.h"
#include "support/draws.h"
#include "support/jobs.h"
#include "support/random_jobs.h"
#include "support/working.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace toft::study {
namespace {

TEST(Setting, AFullySurveyedJobLeavesNothingOpen) {
    const site::Job job = support::plain_job();
    const auto setting = support::prepared(job);
    for (const OpenFact& fact : setting.open) ADD_FAILURE() << fact.pointer;
    for (const std::string& said : setting.assumed) ADD_FAILURE() << said;
}

TEST(Setting, PointsAtTheRunAndTheBuildingItFeeds) {
    const site::Job job = support::plain_job();
    const auto setting = support::prepared(job);
    EXPECT_EQ(setting.job, &job);
    EXPECT_EQ(setting.run, &job.runs[0]);
    EXPECT_EQ(setting.building_facts, &job.buildings[1]);
}

/// The job with everything left out that may be left out.
site::Job bare_job() {
    site::Job job = support::plain_job();
    job.intake = {};
    job.ground = {};
    site::Building& shed = job.buildings[1];
    shed.reach_of_house_earth = {};
    site::Leg& leg = job.runs[0].legs[0];
    leg.other_loaded_circuits = {};
    leg.depth = {};
    return job;
}

TEST(Setting, WhatTheSurveyLeavesOutIsListedWithItsRangeAndItsSource) {
    const site::Job job = bare_job();
    const auto setting = support::prepared(job);
    EXPECT_GE(setting.open.size(), 8u);
    for (const OpenFact& fact : setting.open) {
        EXPECT_EQ(fact.pointer.front(), '/');
        EXPECT_FALSE(fact.says.empty()) << fact.pointer;
        EXPECT_LE(fact.low, fact.high) << fact.pointer;
        EXPECT_FALSE(fact.unit.empty() && !fact.stated) << fact.pointer;
    }
}

TEST(Setting, TheWorseEndIsNeverTheBetterOne) {
    const site::Job job = bare_job();
    const auto worse = support::prepared(job, {End::worse, {}, {}});
    const auto better = support::prepared(job, {End::better, {}, {}});
    EXPECT_GT(worse.supply.ze_most, better.supply.ze_most);
    EXPECT_LT(worse.supply.ze_least, better.supply.ze_least);
    EXPECT_GT(worse.supply.pscc, better.supply.pscc);
    EXPECT_LT(worse.legs[0].factors[0].total, better.legs[0].factors[0].total);
    EXPECT_LT(worse.building.reach_least, better.building.reach_least);
    EXPECT_GT(worse.building.ra_most, better.building.ra_most);
}

TEST(Setting, OneFactCanStandAtAnotherEndThanTheRest) {
    const site::Job job = bare_job();
    const auto worse = support::prepared(job);
    const auto mixed = support::prepared(job, {End::worse, {{"/intake/ze_ohm", End::better}}, {}});
    EXPECT_LT(mixed.supply.ze_most, worse.supply.ze_most);
    EXPECT_EQ(mixed.legs[0].factors[0].total, worse.legs[0].factors[0].total);
}

RC_GTEST_PROP(Setting, PreparingWritesWorkingThatHoldsWhateverIsMissing, ()) {
    site::Job job =
        *rc::gen::arbitrary<bool>() ? support::job_of(*support::any_drawn()) : bare_job();
    job.intake.earthing =
        *rc::gen::element(site::Earthing::tn_s, site::Earthing::tn_c_s, site::Earthing::tt);
    if (*rc::gen::arbitrary<bool>()) job.intake.ze = {};
    if (*rc::gen::arbitrary<bool>()) job.intake.line_neutral_loop = {};
    if (*rc::gen::arbitrary<bool>()) job.intake.pscc = support::measured(kiloamperes(2));
    job.buildings[1].electrode.rods = support::measured(*rc::gen::inRange(1, 5) * 1.0);
    Recording ledger;
    prepare(ledger, support::catalogue(), job, 0, {});
    for (const std::string& wrong : support::wrong_lines(ledger.lines())) RC_FAIL(wrong);
}

RC_GTEST_PROP(Setting, LaidAnewIsAsIfPreparedAtThoseLengths, ()) {
    const site::Job job = support::random_job(*rc::gen::arbitrary<unsigned>());
    site::Job longer = job;
    for (site::Leg& leg : longer.runs[0].legs) {
        leg.length.low = leg.length.low * 1.7;
        leg.length.high = leg.length.high * 1.7;
    }
    auto laid = support::prepared(job);
    lay_anew(laid, longer, Corner{});
    const auto fresh = support::prepared(longer);
    RC_ASSERT(laid.job == &longer);
    RC_ASSERT(laid.run == &longer.runs[0]);
    RC_ASSERT(laid.length_most == fresh.length_most);
    RC_ASSERT(laid.length_least == fresh.length_least);
    RC_ASSERT(laid.legs.size() == fresh.legs.size());
    RC_ASSERT(laid.stretches.size() == fresh.stretches.size());
    RC_ASSERT(laid.unsaid.size() == fresh.unsaid.size());
    for (std::size_t i = 0; i < fresh.legs.size(); ++i) {
        RC_ASSERT(laid.legs[i].length == fresh.legs[i].length);
        RC_ASSERT(laid.legs[i].stretch == fresh.legs[i].stretch);
        RC_ASSERT(laid.legs[i].surroundings == fresh.legs[i].surroundings);
    }
    RC_PRE(fresh.phases == 1);
    auto scheme =
        support::scheme(support::cable(3, 10), Protective::core_and_armour, support::fuse(32));
    scheme.stretches = fresh.stretches.size();
    scheme.stretch.fill(scheme.first());
    Silent silent;
    Figures<Silent> a;
    Figures<Silent> b;
    work_out(silent, laid, scheme, Stage::heat, a);
    work_out(silent, fresh, scheme, Stage::heat, b);
    RC_ASSERT(a.drop_path == b.drop_path);
    RC_ASSERT(a.zs_far == b.zs_far);
    RC_ASSERT(a.heat == b.heat);
}

}  // namespace
}  // namespace toft::study
