#include "existing/existing_loop.h"

#include "support/catalogue.h"
#include "support/existing.h"
#include "support/judging.h"

#include <gtest/gtest.h>

namespace toft::rules {
namespace {

using study::Laid;
using support::measured;

/// 30 m of two-core 10 mm² that reads so many times what its length gives.
site::Job reads_times(double times) {
    site::Job job = support::with_cable_there(support::plain_job(), support::cable(2, 10));
    site::Existing& e = *job.runs[0].existing;
    e.r1_r2 = measured(e.r1_r2.low * times);
    return job;
}

Finding<Silent> loop_judged(const site::Job& job, Laid laid) {
    auto s = support::scheme(support::cable(2, 10), study::Protective::armour, support::fuse(32));
    s.first().laid = laid;
    s.first().parallel = laid == Laid::doubled ? 2 : 1;
    EXPECT_TRUE(support::recorded_alike("existing-loop", job, s));
    return support::finding_of("existing-loop", job, s);
}

TEST(ExistingLoop, ByHandFromTheTables) {
    // 30 m: core 1.83 mΩ/m; armour as tabulated for two cores of 10 mm².
    const double armour = support::cable(2, 10).armour_r20.value.number();
    const auto found = loop_judged(reads_times(1), Laid::kept);
    EXPECT_NEAR(found.value, 30 * (1.83e-3 + armour), 1e-9);
    EXPECT_NEAR(found.limit, 1.5 * 30 * (1.83e-3 + armour), 1e-9);
    EXPECT_EQ(found.verdict, Verdict::meets);
}

TEST(ExistingLoop, HalfAsMuchAgainIsTooMuch) {
    EXPECT_EQ(loop_judged(reads_times(1.49), Laid::kept).verdict, Verdict::meets);
    EXPECT_EQ(loop_judged(reads_times(1.51), Laid::kept).verdict, Verdict::fails);
    EXPECT_EQ(loop_judged(reads_times(0.6), Laid::kept).verdict, Verdict::caution);
    EXPECT_FALSE(loop_judged(reads_times(9), Laid::anew).concerns);
}

TEST(ExistingLoop, BesideASecondCableBothMustShare) {
    // Currents I and 1.105 I differ by a tenth of their mean: 0.105 / 1.0525.
    EXPECT_EQ(loop_judged(reads_times(1.10), Laid::doubled).verdict, Verdict::meets);
    EXPECT_EQ(loop_judged(reads_times(1.11), Laid::doubled).verdict, Verdict::fails);
    EXPECT_NEAR(loop_judged(reads_times(1), Laid::doubled).use, 1 / (1 + 0.2 / 1.9), 1e-9);
}

TEST(ExistingLoop, LineAndNeutralAreHeldAgainstTheirsToo) {
    site::Job job = reads_times(1);
    job.runs[0].existing->r1_rn = measured(ohms(2 * 1.83e-3 * 30 * 1.6));
    const auto found = loop_judged(job, Laid::kept);
    EXPECT_EQ(found.verdict, Verdict::fails);
    EXPECT_NEAR(found.use, 1.6 / 1.5, 1e-9);
}

TEST(ExistingLoop, WhatWasNotReadMayBeAnything) {
    site::Job job = reads_times(1);
    job.runs[0].existing->r1_r2 = {};
    EXPECT_EQ(loop_judged(job, Laid::kept).verdict, Verdict::fails);
}

}  // namespace
}  // namespace toft::rules
