// Three phases: which runs may take them, how single-phase circuits spread, what the neutral
// carries.

#include "cable/drop.h"
#include "study/figures.h"
#include "support/catalogue.h"
#include "support/draws.h"
#include "support/jobs.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <complex>

namespace toft::study {
namespace {

using support::measured;
using support::on_three_phases;
using Complex = std::complex<double>;
using Choices = std::vector<int>;

site::Circuit circuit(int phases, double watts, double power_factor = 1) {
    site::Circuit c;
    c.name = "circuit";
    c.kind = site::CircuitKind::kiln;  // counts whole
    c.phases = phases;
    c.load_w = measured(watts);
    c.power_factor = measured(power_factor);
    return c;
}

site::Job job_with(std::vector<site::Circuit> circuits) {
    site::Job job = on_three_phases(support::plain_job());
    job.buildings[1].load = {};
    job.buildings[1].power_factor = {};
    job.buildings[1].circuits = std::move(circuits);
    return job;
}

TEST(Phases, ASupplyOfOneLineLeavesNoChoice) {
    site::Job job = support::plain_job();
    job.buildings[1].load = {};
    job.buildings[1].load_w = measured(4000.0);
    EXPECT_EQ(phase_choices(job, 0), Choices{1});
}

TEST(Phases, WhatTheRunStatesOrItsLoadsNeedDecidesElseBothAreOpen) {
    site::Job job = job_with({circuit(1, 2300)});
    EXPECT_EQ(phase_choices(job, 0), Choices{3});
    job.runs[0].phases = 1;
    EXPECT_EQ(phase_choices(job, 0), Choices{1});
    job.runs[0].phases.reset();
    EXPECT_EQ(phase_choices(job, 0), (Choices{1, 3}));
    job.buildings[1].circuits.push_back(circuit(3, 6000));
    EXPECT_EQ(phase_choices(job, 0), Choices{3});
}

TEST(Phases, AmperesWithoutTheirPhasesAreThoseOfOneLine) {
    site::Job job = on_three_phases(support::plain_job());
    job.runs[0].phases.reset();
    EXPECT_EQ(phase_choices(job, 0), Choices{1});
}

TEST(Phases, WattsOfTheWholeAreSpreadEvenlyAndThatIsSaid) {
    site::Job job = job_with({});
    job.buildings[1].load_w = measured(13800.0);
    job.buildings[1].power_factor = measured(0.8);
    const auto setting = support::prepared(job);
    EXPECT_NEAR(setting.ib.number(), 13800 / 0.8 / 690, 1e-12);
    EXPECT_EQ(setting.neutral_share, 0);
    EXPECT_FALSE(setting.assumed.empty());
}

TEST(Phases, ThreePhaseCircuitsLoadEveryLineAndSingleOnesGoWhereThereIsLeast) {
    // Lines at 10 A from the motor; 20, 15, 8 and 6 A go one to a line, the last beside the 8.
    const site::Job job = job_with(
        {circuit(3, 6900), circuit(1, 1840), circuit(1, 4600), circuit(1, 1380), circuit(1, 3450)});
    const auto setting = support::prepared(job);
    EXPECT_NEAR(setting.ib.number(), 10 + 20, 1e-12);
    const Complex a(-0.5, std::sqrt(3) / 2);
    const double neutral = std::abs(30.0 + 25.0 * a * a + 24.0 * a);
    EXPECT_NEAR(setting.neutral_share, neutral / 30, 1e-12);
}

TEST(Phases, OneLineAloneReturnsAllItTakes) {
    const auto setting = support::prepared(job_with({circuit(1, 4600)}));
    EXPECT_NEAR(setting.ib.number(), 20, 1e-12);
    EXPECT_NEAR(setting.neutral_share, 1, 1e-12);
}

RC_GTEST_PROP(Phases, TheNeutralCarriesThePhasorSumOfTheLines, ()) {
    std::array<double, 3> a{};
    std::vector<site::Circuit> circuits;
    double all = support::number_between(0, 20);
    if (all > 0) circuits.push_back(circuit(3, all * 690));
    for (double& line : a) {
        const double single = support::number_between(0.1, 30);
        line = all + single;
        circuits.push_back(circuit(1, single * 230));
    }
    const site::Job job = job_with(circuits);
    const auto setting = support::prepared(job);
    const double third = 2 * std::acos(-1.0) / 3;
    const double neutral = std::abs(a[0] + std::polar(a[1], -third) + std::polar(a[2], third));
    const double most = std::fmax(a[0], std::fmax(a[1], a[2]));
    RC_ASSERT(std::fabs(setting.ib.number() - most) < 1e-9);
    RC_ASSERT(std::fabs(setting.neutral_share * most - neutral) < 1e-6);
}

Figures<Silent> worked_out(const site::Job& job, const RunScheme& scheme) {
    Silent ledger;
    Figures<Silent> figures;
    work_out(ledger, support::prepared(job), scheme, Stage::heat, figures);
    return figures;
}

RunScheme five_core() {
    RunScheme s = support::scheme(support::cable(5, 10), Protective::core, support::fuse(45));
    s.phases = 3;
    return s;
}

TEST(Phases, BalancedTheRunLosesLineToNeutralWhatTheTableSaysOverTheRootOfThree) {
    site::Job job = job_with({circuit(3, 690 * 20)});
    job.runs[0].legs[0] = support::plain_leg(site::LegMethod::buried_direct, 40);
    const auto setting = support::prepared(job);
    Silent ledger;
    const auto& leg = setting.legs[0];
    const auto& cable = support::cable(5, 10);
    const auto& make = tables::make_of(support::catalogue(), cable);
    const auto drop = cable::leg_drop(
        ledger, cable::DropInput<Silent>{support::catalogue().cable_constants, make, cable.three,
                                         leg.factors[0], 3, amperes(20), 0.0, leg.surroundings,
                                         leg.length, 1});
    const double warm = (234.5 + drop.conductor.number()) / (234.5 + 90);
    const double per_core = cable.three.drop_r.value.number() * warm / std::sqrt(3) * 40;
    EXPECT_NEAR(worked_out(job, five_core()).drop.number(), 20 * per_core, 0.02);
}

TEST(Phases, FaultsOfThreeLinesAreTwiceThatOfOneWithItsNeutralAtTheOrigin) {
    site::Job job = job_with({circuit(3, 690 * 20)});
    job.intake.line_neutral_loop = measured(ohms(0.2));
    const auto f = worked_out(job, five_core());
    const auto supply = support::prepared(job).supply;
    EXPECT_NEAR(supply.zl_most.number(), 0.1, 1e-12);
    EXPECT_NEAR(f.lll_near.number(), 1.1 * 230 / 0.1, 1e-9);
    EXPECT_NEAR(f.ln_near.number(), 1.1 * 230 / 0.2, 1e-9);
    EXPECT_NEAR(f.ll_near.number(), 1.1 * std::sqrt(3) * 230 / (2 * 0.1), 1e-9);
    EXPECT_NEAR(f.ll_far / f.lll_far, std::sqrt(3) / 2, 1e-12);
    EXPECT_NEAR(f.ll_near_least.number(), 0.95 * std::sqrt(3) * 230 / (2 * 0.1), 1e-9);
    EXPECT_LT(f.lll_far, f.lll_near);
    EXPECT_LT(f.ll_least, f.ll_far);
}

TEST(Phases, AStatedFaultCurrentOfThreeLinesBoundsTheDeviceAndHalvesForOne) {
    site::Job job = job_with({circuit(3, 690 * 20)});
    job.intake.line_neutral_loop = {};
    job.intake.ze = measured(ohms(0.35));
    job.intake.pscc = measured(kiloamperes(4));
    EXPECT_NEAR(support::prepared(job).supply.pscc.number(), 4000, 1e-9);
    EXPECT_NEAR(support::prepared(job).supply.zn_most.number(), 230.0 / 2000, 1e-12);
    job.runs[0].phases = 1;
    job.buildings[1].circuits = {circuit(1, 4600)};
    EXPECT_NEAR(support::prepared(job).supply.pscc.number(), 2000, 1e-9);
}

}  // namespace
}  // namespace toft::study
