#include "study/circuit_figures.h"

#include "circuit/circuits.h"
#include "support/catalogue.h"
#include "support/jobs.h"

#include <gtest/gtest.h>

namespace toft::study {
namespace {

RunScheme on_core(double section = 6) {
    return support::scheme(support::cable(3, section), Protective::core_and_armour,
                           support::fuse(32));
}

Figures<Silent> worked(const Setting<Silent>& setting, const RunScheme& scheme) {
    Silent silent;
    Figures<Silent> f;
    work_out(silent, setting, scheme, Stage::circuits, f);
    return f;
}

TEST(CircuitFigures, TheBoardHasTheRunsLoopAndDrop) {
    const site::Job job = circuit::job_with({circuit::heater(3000, 10)});
    const auto setting = support::prepared(job);
    const auto f = worked(setting, on_core());
    Silent silent;
    const auto feed = feed_of(silent, setting, on_core(), f);
    EXPECT_NEAR(feed.zs[0].number(), f.zs_far.number(), 1e-9);
    EXPECT_NEAR(feed.drop.number(), f.drop.number(), 1e-12);
    EXPECT_GT(feed.zs[2], feed.zs[1]);
    EXPECT_GT(feed.zs[1], feed.zs[0]);
    EXPECT_TRUE(feed.by_conductor);
    ASSERT_EQ(f.circuits.size(), 1u);
    EXPECT_GT(f.circuits[0].zs, f.zs_far);
}

TEST(CircuitFigures, AnOwnElectrodeSendsFaultsThroughTheGround) {
    const site::Job job = circuit::job_with({circuit::heater(3000, 10)});
    const auto setting = support::prepared(job);
    RunScheme scheme = support::scheme(support::cable(2, 6), Protective::armour, support::fuse(32));
    scheme.earthing = BuildingEarthing::own_electrode;
    const auto f = worked(setting, scheme);
    EXPECT_TRUE(f.circuits.at(0).by_residual);
}

TEST(CircuitFigures, AThinnerRunMayAskForAThickerCircuit) {
    site::Job job = circuit::job_with({circuit::heater(3000, 22)});
    job.wishes.drop_run = support::measured(4.9);
    const auto setting = support::prepared(job);
    const auto thin = worked(setting, on_core(2.5));
    const auto thick = worked(setting, on_core(16));
    EXPECT_GT(thin.circuits.at(0).option.cable->section,
              thick.circuits.at(0).option.cable->section);
}

TEST(CircuitFigures, WithEveryCircuitDesignedTheRunMayTakeWhatTheyLeave) {
    site::Job job = circuit::job_with({circuit::heater(3000, 10)});
    EXPECT_NEAR(support::prepared(job).drop_limit, 5, 1e-12);
    job.wishes.drop_run = support::measured(2.0);
    EXPECT_NEAR(support::prepared(job).drop_limit, 2, 1e-12);
    job.wishes.drop_run = {};
    job.buildings[1].circuits[0].length = {};
    EXPECT_NEAR(support::prepared(job).drop_limit, 2.5, 1e-12);
}

TEST(CircuitFigures, OneLineOfThreePhasesMeetsItsNeutralWhole) {
    const site::Job job = support::on_three_phases(circuit::job_with({circuit::heater(3000, 10)}));
    const auto setting = support::prepared(job);
    const auto scheme =
        support::scheme(support::cable(4, 6), Protective::armour, support::fuse(32));
    Silent silent;
    Figures<Silent> f;
    work_out(silent, setting, scheme, Stage::circuits, f);
    const auto feed = feed_of(silent, setting, scheme, f);
    EXPECT_NEAR(feed.run.r.number(), 2 * f.met.r.number() / (1 + setting.neutral_share), 1e-12);
}

}  // namespace
}  // namespace toft::study
