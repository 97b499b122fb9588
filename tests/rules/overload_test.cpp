#include "rules/overload.h"

#include "support/catalogue.h"
#include "support/jobs.h"
#include "support/judging.h"

#include <gtest/gtest.h>

namespace toft::rules {
namespace {

using support::measured;

Finding<Silent> overload_judged(const site::Job& job, double fuse) {
    const auto scheme =
        support::scheme(support::cable(2, 10), study::Protective::armour, support::fuse(fuse));
    EXPECT_TRUE(support::recorded_alike("overload", job, scheme));
    return support::finding_of("overload", job, scheme);
}

site::Job drawing(double load_a) {
    site::Job job = support::plain_job();
    job.buildings[1].load = measured(amperes(load_a));
    return job;
}

TEST(Overload, TheDeviceCarriesTheLoad) {
    EXPECT_EQ(overload_judged(drawing(31.9), 32).verdict, Verdict::meets);
    EXPECT_EQ(overload_judged(drawing(32), 32).verdict, Verdict::meets);  // a tie
    EXPECT_EQ(overload_judged(drawing(32.01), 32).verdict, Verdict::fails);
    EXPECT_DOUBLE_EQ(overload_judged(drawing(24), 32).use, 0.75);
}

TEST(Overload, WhatComesLaterCountsToday) {
    site::Job job = drawing(20);
    job.buildings[1].future_load = measured(amperes(12));
    EXPECT_EQ(overload_judged(job, 32).verdict, Verdict::meets);
    job.buildings[1].future_load = measured(amperes(13));
    EXPECT_EQ(overload_judged(job, 32).verdict, Verdict::fails);
    EXPECT_EQ(overload_judged(job, 45).verdict, Verdict::meets);
}

TEST(Overload, WattsAreDividedByVoltsAndPowerFactor) {
    site::Job job = support::plain_job();
    job.buildings[1].load = {};
    job.buildings[1].load_w = measured(3680.0);
    EXPECT_EQ(overload_judged(job, 16).verdict, Verdict::meets);  // 16 A
    job.buildings[1].power_factor = measured(0.8);                // 20 A
    EXPECT_EQ(overload_judged(job, 16).verdict, Verdict::fails);
    EXPECT_EQ(overload_judged(job, 20).verdict, Verdict::meets);
}

}  // namespace
}  // namespace toft::rules
