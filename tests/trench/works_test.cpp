#include "trench/works.h"

#include "trench/digging_jobs.h"

#include <gtest/gtest.h>

namespace toft::trench {
namespace {

bool says(const Works& works, const std::string& what) {
    for (const std::string& one : works.says) {
        if (one.find(what) != std::string::npos) return true;
    }
    return false;
}

TEST(Works, TheDemoDigsItsOneBuriedLeg) {
    const Works works = works_of_example("demo");
    ASSERT_EQ(works.trenches.size(), 1u);
    const Trench& trench = works.trenches[0];
    EXPECT_EQ(signs_of(works, trench), "A2");
    EXPECT_NEAR(trench.of.length.number(), 21, 1e-12);
    EXPECT_NEAR(trench.section.cover.number(), 0.6, 1e-12);
    EXPECT_TRUE(trench.cover.stated);
    ASSERT_EQ(trench.lying.size(), 1u);
    const double overall =
        picture::example("demo").answer.schemes.front().run.stretches.front().overall_mm;
    EXPECT_NEAR(trench.lying[0].across.number() * 1000, overall, 1e-9);
    EXPECT_TRUE(works.says.empty());
}

TEST(Works, ASharedTrenchIsDugOnce) {
    const Works works = works_of_example("tansy-bank");
    int shared = 0;
    double dug = 0;
    double buried = 0;
    for (const Trench& trench : works.trenches) {
        shared += trench.legs.size() > 1;
        dug += trench.of.length.number();
        if (trench.legs.size() < 2) continue;
        EXPECT_NEAR(trench.of.length.number(), 20, 1e-12);  // the longer of 18 and 20 m
        EXPECT_EQ(trench.lying.size(), 2u);
        EXPECT_TRUE(works.legs[trench.legs.front()].leg.dug_for.empty());
    }
    for (const LegWork& leg : works.legs) {
        if (site::buried(leg.leg.method)) buried += leg.leg.length.high.number();
    }
    EXPECT_EQ(shared, 1);
    EXPECT_NEAR(buried - dug, 18, 1e-9);
    EXPECT_NEAR(works.total.length.number(), dug, 1e-9);
}

TEST(Works, RunsStandInTheOrderOfTheSchemeAndEveryLegHasASign) {
    const Works works = works_of_example("hurdle-farm-yard");
    const picture::Example& one = picture::example("hurdle-farm-yard");
    EXPECT_EQ(works.job.runs.front().id, one.answer.schemes.front().run.id);
    EXPECT_EQ(works.job.runs.size(), 6u);
    EXPECT_EQ(works.legs.front().sign, "A1");
    std::size_t legs = 0;
    for (const site::Run& run : works.job.runs) legs += run.legs.size();
    EXPECT_EQ(works.legs.size(), legs);
    EXPECT_EQ(works.electrodes.size(), 1u);
    EXPECT_EQ(works.electrodes[0].says, "2 earth rods of 2.4 m");
}

TEST(Works, ByTheLongestThatALengthMayBe) {
    for (const Trench& trench : works_of_example("hurdle-farm-yard").trenches) {
        if (trench.cover.depth == metres(0.75)) {
            EXPECT_NEAR(trench.of.length.number(), 52, 1e-9);
        }
    }
}

TEST(Works, TrenchesOfOneSectionAreOneSort) {
    site::Job job = support::job_with_legs({support::plain_leg(site::LegMethod::buried_direct, 10),
                                            support::plain_leg(site::LegMethod::buried_direct, 5)});
    EXPECT_EQ(works_of_job(job).sorts.size(), 1u);
    job.runs[0].legs[1].depth = support::measured(metres(0.9));
    EXPECT_EQ(works_of_job(job).sorts.size(), 2u);
}

TEST(Works, WhatIsNotStatedIsReckonedOnTheSafeSideAndSaid) {
    site::Job job = support::plain_job();
    site::Leg& leg = job.runs[0].legs[0];
    leg.depth = {};
    leg.surface = site::Surface::drive;
    const Works advised = works_of_job(job);
    EXPECT_NEAR(advised.trenches[0].cover.depth.number(), 0.6, 1e-12);
    EXPECT_TRUE(says(advised, "its depth is not stated; reckoned with 0.6 m"));
    leg.surface.reset();
    const Works nothing = works_of_job(job);
    EXPECT_NEAR(nothing.trenches[0].cover.depth.number(), 1, 1e-12);
    EXPECT_TRUE(says(nothing, "what lies over it is not stated"));
}

TEST(Works, ADepthBelowWhatIsAdvisedIsSaid) {
    site::Job job = support::plain_job();
    job.runs[0].legs[0].surface = site::Surface::field;
    job.runs[0].legs[0].depth = support::measured(metres(0.4));
    EXPECT_TRUE(says(works_of_job(job), "0.4 m over the cable is less than the 1 m"));
}

TEST(Works, NothingIsDugForAnOverheadRun) {
    const Works works = works_of_example("overhead-stable");
    EXPECT_TRUE(works.trenches.empty());
    EXPECT_EQ(works.total.dug, cubic_metres(0));
}

TEST(Works, BesideACableThatStaysIsDugByHandAndForItAloneNot) {
    const picture::Example& one = picture::example("old-garage-cable");
    answer::SchemeAnswer scheme = one.answer.schemes.front();
    ASSERT_TRUE(scheme.run.stretches.front().separate_mm2);
    const Works beside = works_of({shop(), one.job, &scheme});
    ASSERT_EQ(beside.trenches.size(), 1u);
    EXPECT_EQ(beside.trenches[0].lying.size(), 2u);
    EXPECT_TRUE(beside.trenches[0].lying[0].there);
    EXPECT_FALSE(beside.trenches[0].lying[1].there);
    EXPECT_TRUE(says(beside, "an old cable lies there and stays"));
    scheme.run.stretches.front().separate_mm2.reset();
    const Works alone = works_of({shop(), one.job, &scheme});
    EXPECT_TRUE(alone.trenches.empty());
    EXPECT_TRUE(alone.legs[1].stays);
}

TEST(Works, SignsOfRunsGoOnAfterZ) {
    EXPECT_EQ(run_sign(0), "A");
    EXPECT_EQ(run_sign(25), "Z");
    EXPECT_EQ(run_sign(26), "AA");
    EXPECT_EQ(run_sign(53), "BB");
}

}  // namespace
}  // namespace toft::trench
