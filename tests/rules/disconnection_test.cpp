#include "rules/disconnection.h"

#include "support/catalogue.h"
#include "support/jobs.h"
#include "support/judging.h"

#include <gtest/gtest.h>

namespace toft::rules {
namespace {

using study::Protective;
using support::measured;

const tables::RunRcd& delayed(double sensitivity_ma) {
    for (const tables::RunRcd& rcd : support::catalogue().run_rcds) {
        if (rcd.sensitivity == milliamperes(sensitivity_ma)) return rcd;
    }
    throw std::runtime_error("no such RCD");
}

Finding<Silent> disconnection_judged(const site::Job& job, const study::RunScheme& scheme) {
    EXPECT_TRUE(support::recorded_alike("disconnection", job, scheme));
    return support::finding_of("disconnection", job, scheme);
}

study::RunScheme core10(const tables::Device& device) {
    return support::scheme(support::cable(3, 10), Protective::core, device);
}

site::Job tn(double ze_ohm) {
    site::Job job = support::plain_job();
    job.intake.ze = measured(ohms(ze_ohm));
    return job;
}

/// A TT house with that electrode; the building shares it.
site::Job tt(double electrode_ohm) {
    site::Job job = support::plain_job();
    job.intake.earthing = site::Earthing::tt;
    job.intake.ze = {};
    job.intake.electrode = measured(ohms(electrode_ohm));
    return job;
}

study::RunScheme shared(const tables::Device& device) {
    study::RunScheme s = core10(device);
    s.earthing = study::BuildingEarthing::shared_electrode;
    return s;
}

TEST(Disconnection, ThroughAnElectrodeNobodyMeasuredIsNotKnown) {
    study::RunScheme s = shared(support::fuse(32));
    s.rcd = &delayed(100);
    site::Job job = tt(100);
    EXPECT_EQ(disconnection_judged(job, s).verdict, Verdict::meets);
    job.intake.electrode = {};
    EXPECT_EQ(disconnection_judged(job, s).verdict, Verdict::not_known);
    s.rcd = &delayed(300);  // fails at 200 ohm: a smaller reading may still do
    EXPECT_EQ(disconnection_judged(job, s).verdict, Verdict::fails);
}

TEST(Disconnection, OnTnTheDeviceHasFiveSeconds) {
    // 218.5 V over the five-second current of each device.
    EXPECT_NEAR(disconnection_judged(tn(0.2), core10(support::fuse(32))).limit, 218.5 / 140, 1e-12);
    EXPECT_NEAR(disconnection_judged(tn(0.2), core10(support::breaker("B", 32))).limit, 218.5 / 160,
                1e-12);
    EXPECT_NEAR(disconnection_judged(tn(0.2), core10(support::breaker("C", 32))).limit, 218.5 / 320,
                1e-12);
}

TEST(Disconnection, ALoopAtItsLimitIsMetAndAboveItFails) {
    const auto scheme = core10(support::breaker("B", 32));
    const auto found = disconnection_judged(tn(0.2), scheme);
    const double room = found.limit - found.value;
    ASSERT_GT(room, 0);
    EXPECT_EQ(disconnection_judged(tn(0.2 + room), scheme).verdict, Verdict::meets);
    EXPECT_NEAR(disconnection_judged(tn(0.2 + room), scheme).use, 1, 1e-9);
    EXPECT_EQ(disconnection_judged(tn(0.2 + room * (1 - 1e-6)), scheme).verdict, Verdict::meets);
    EXPECT_EQ(disconnection_judged(tn(0.2 + room * (1 + 1e-6)), scheme).verdict, Verdict::fails);
}

TEST(Disconnection, AnRcdAtTheHeadNeedsOnlyFiftyVolts) {
    study::RunScheme s = core10(support::breaker("C", 63));
    EXPECT_EQ(disconnection_judged(tn(0.8), s).verdict, Verdict::fails);
    s.rcd = &delayed(100);
    const auto found = disconnection_judged(tn(0.8), s);
    EXPECT_EQ(found.verdict, Verdict::meets);
    EXPECT_NEAR(found.limit, 500, 1e-9);
    EXPECT_NE(std::string(found.says).find("RCD"), std::string::npos);
    s.rcd = &delayed(300);
    EXPECT_NEAR(disconnection_judged(tn(0.8), s).limit, 50 / 0.3, 1e-9);
}

TEST(Disconnection, OnTtTheDeviceHasOneSecondAndCannotDoIt) {
    const auto fuse = disconnection_judged(tt(20), shared(support::fuse(16)));
    EXPECT_NEAR(fuse.limit, 218.5 / 78, 1e-12);
    EXPECT_EQ(fuse.verdict, Verdict::fails);
    EXPECT_EQ(disconnection_judged(tt(20), shared(support::breaker("B", 6))).verdict,
              Verdict::fails);
}

TEST(Disconnection, OnTtADelayedRcdDoes) {
    study::RunScheme s = shared(support::fuse(32));
    s.rcd = &delayed(100);
    EXPECT_EQ(disconnection_judged(tt(100), s).verdict, Verdict::meets);
    // The loop holds the house's electrode and the distributor's (21 ohm) besides the run.
    const double rest = disconnection_judged(tt(100), s).value - 100;
    EXPECT_GT(rest, 21);
    EXPECT_EQ(disconnection_judged(tt(500 - rest), s).verdict,
              Verdict::meets);  // RA x IdN = 50 V: a tie
    EXPECT_EQ(disconnection_judged(tt(500 - rest - 0.001), s).verdict, Verdict::meets);
    EXPECT_EQ(disconnection_judged(tt(500 - rest + 0.001), s).verdict, Verdict::fails);
    s.rcd = &delayed(300);
    EXPECT_EQ(disconnection_judged(tt(100), s).verdict, Verdict::meets);
    EXPECT_EQ(disconnection_judged(tt(160), s).verdict, Verdict::fails);
}

TEST(Disconnection, AnRcdSlowerThanTheSystemAllowsFails) {
    tables::RunRcd slow = delayed(100);
    study::RunScheme s = shared(support::fuse(32));
    s.rcd = &slow;
    slow.longest.value = seconds(1);
    EXPECT_EQ(support::finding_of("disconnection", tt(50), s).verdict, Verdict::meets);
    slow.longest.value = seconds(1.1);
    EXPECT_EQ(support::finding_of("disconnection", tt(50), s).verdict, Verdict::fails);
    s.earthing = study::BuildingEarthing::supply_earth;
    EXPECT_EQ(support::finding_of("disconnection", tn(0.3), s).verdict, Verdict::meets);
}

TEST(Disconnection, ABuildingOnItsOwnRodStillHasItsArmourClearedAtTheHouse) {
    study::RunScheme s =
        support::scheme(support::cable(2, 10), Protective::armour, support::breaker("C", 63));
    s.earthing = study::BuildingEarthing::own_electrode;
    EXPECT_EQ(disconnection_judged(tn(0.2), s).verdict, Verdict::fails);
    s.device = &support::breaker("B", 32);
    EXPECT_EQ(disconnection_judged(tn(0.2), s).verdict, Verdict::meets);
}

TEST(Disconnection, AFaultToAnArmourThatDoesNotServeMustClearToo) {
    study::RunScheme core = core10(support::breaker("B", 32));
    study::RunScheme both = core;
    both.first().protective = Protective::core_and_armour;
    EXPECT_GT(disconnection_judged(tn(0.2), core).value, disconnection_judged(tn(0.2), both).value);
}

TEST(Disconnection, TheDeclaredLoopCountsWhereItIsLarger) {
    site::Job job = tn(0.2);
    const auto scheme = core10(support::fuse(32));
    const double measured_loop = disconnection_judged(job, scheme).value;
    job.intake.ze_declared = measured(ohms(0.35));
    EXPECT_NEAR(disconnection_judged(job, scheme).value - measured_loop, 0.15, 1e-12);
}

}  // namespace
}  // namespace toft::rules
