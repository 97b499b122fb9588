#include "study/path.h"

#include "support/catalogue.h"
#include "support/jobs.h"

#include <gtest/gtest.h>

namespace toft::study {
namespace {

using support::cable;

FaultPath<Silent> path_of(const RunScheme& scheme, Heat heat, double length_m = 100) {
    const site::Job job = support::plain_job();
    Silent ledger;
    return fault_path(ledger, support::prepared(job), scheme.first(), {heat, metres(length_m), 0});
}

RunScheme scheme_with(Protective protective) {
    RunScheme scheme = support::scheme(cable(3, 10), protective, support::fuse(45));
    if (separate_serves(protective)) scheme.first().separate = &support::conductor(16);
    return scheme;
}

TEST(Path, AHundredMetresOfCoreReadAtTwentyDegreesWhatTheTableSays) {
    const auto path = path_of(scheme_with(Protective::core), Heat::cold);
    EXPECT_NEAR(path.line.r.number(), 0.183, 1e-12);
    EXPECT_EQ(path.line.r, path.core.r);
}

TEST(Path, ACoreAtNinetyDegreesHasTwentySevenAndAHalfPerCentMore) {
    const auto path = path_of(scheme_with(Protective::core), Heat::working);
    EXPECT_NEAR(path.line.r.number() / 0.183, 1.2751, 1e-9);
}

TEST(Path, ATesterReadsTheArmourByDirectCurrent) {
    const auto path = path_of(scheme_with(Protective::armour), Heat::cold);
    EXPECT_NEAR(path.armour.r.number(), cable(3, 10).armour_r20.value.number() * 100, 1e-12);
}

TEST(Path, ArmourGrowsWithItsOwnMetalAndForAlternatingCurrent) {
    const auto path = path_of(scheme_with(Protective::armour), Heat::working);
    const double table = cable(3, 10).armour_r20.value.number() * 100;
    EXPECT_NEAR(path.armour.r.number() / table, 1.1 * (1 + 0.0045 * 60), 1e-9);
    EXPECT_NEAR(path.armour.x.number(), 0.03, 1e-12);
}

TEST(Path, AFaultIsWarmerThanWorkAndWorkWarmerThanATest) {
    for (Protective p : {Protective::armour, Protective::core, Protective::core_and_armour,
                         Protective::separate, Protective::armour_and_separate}) {
        const auto cold = path_of(scheme_with(p), Heat::cold);
        const auto work = path_of(scheme_with(p), Heat::working);
        const auto fault = path_of(scheme_with(p), Heat::fault);
        EXPECT_LT(cold.serving.r, work.serving.r) << protective_word(p);
        EXPECT_LT(work.serving.r, fault.serving.r) << protective_word(p);
        EXPECT_LT(cold.line.r, work.line.r);
        EXPECT_LT(work.line.r, fault.line.r);
    }
}

TEST(Path, AFaultThatLastsIsTakenAtTheFinalTemperature) {
    const auto path = path_of(scheme_with(Protective::core), Heat::fault);
    EXPECT_NEAR(path.line.r.number() / 0.183, 1 + 0.00393 * (250 - 20), 1e-9);
}

TEST(Path, TwoWaysBackAreBetterThanEither) {
    const auto both = path_of(scheme_with(Protective::core_and_armour), Heat::working);
    Silent ledger;
    EXPECT_LT(magnitude(both.serving), magnitude(both.core));
    EXPECT_LT(magnitude(both.serving), magnitude(both.armour));
    const auto beside = parallel(ledger, {{"a", ""}, {"b", ""}, {"c", ""}}, both.core, both.armour);
    EXPECT_EQ(both.serving.r, beside.r);
    EXPECT_EQ(both.serving.x, beside.x);
}

TEST(Path, ASeparateConductorIsTakenAtItsOwnTemperatures) {
    const auto path = path_of(scheme_with(Protective::separate), Heat::working);
    const auto& heat = support::catalogue().cable_constants.separate;
    const double rise = 1 + 0.00393 * (heat.initial.value.number() - 20);
    EXPECT_NEAR(path.separate.r.number(), 0.115 * rise, 1e-9);
    EXPECT_EQ(path.serving.r, path.separate.r);
}

TEST(Path, EverythingIsProportionalToLength) {
    const auto near = path_of(scheme_with(Protective::core_and_armour), Heat::fault, 20);
    const auto far = path_of(scheme_with(Protective::core_and_armour), Heat::fault, 60);
    EXPECT_NEAR(far.serving.r.number(), 3 * near.serving.r.number(), 1e-12);
    EXPECT_NEAR(far.serving.x.number(), 3 * near.serving.x.number(), 1e-12);
    EXPECT_NEAR(far.line.x.number(), 3 * near.line.x.number(), 1e-12);
}

}  // namespace
}  // namespace toft::study
