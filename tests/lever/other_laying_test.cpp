#include "lever/asking.h"

#include <gtest/gtest.h>

namespace toft::lever {
namespace {

TEST(OtherLaying, DuctAndDirectAreEachOthersLever) {
    const site::Job job = support::plain_job();
    const Changes all = changes_of(other_laying, job);
    const Change* duct = change_of(all, "duct");
    ASSERT_NE(duct, nullptr);
    EXPECT_EQ(duct->job.runs[0].legs[0].method, site::LegMethod::buried_in_duct);
    const Changes back = changes_of(other_laying, duct->job);
    const Change* direct = change_of(back, "direct");
    ASSERT_NE(direct, nullptr);
    EXPECT_EQ(direct->job.runs[0].legs[0].method, site::LegMethod::buried_direct);
}

TEST(OtherLaying, TheAdvisedDepthIsThatOfTheSurface) {
    site::Job job = support::plain_job();
    job.runs[0].legs[0].surface = site::Surface::road;
    job.runs[0].legs[0].depth = support::measured(metres(0.5));
    const Changes all = changes_of(other_laying, job);
    const Change* depth = change_of(all, "usual-depth");
    ASSERT_NE(depth, nullptr);
    EXPECT_EQ(depth->job.runs[0].legs[0].depth.low, metres(0.75));
    EXPECT_EQ(change_of(changes_of(other_laying, depth->job), "usual-depth"), nullptr);
}

TEST(OtherLaying, CableComesOutOfInsulationAndAwayFromOthers) {
    site::Leg leg = support::plain_leg(site::LegMethod::in_insulation, 8);
    leg.other_loaded_circuits = support::measured(2.0);
    const site::Job job = support::job_with_legs({leg});
    const Changes all = changes_of(other_laying, job);
    const Change* out = change_of(all, "out-of-insulation");
    const Change* apart = change_of(all, "apart");
    ASSERT_NE(out, nullptr);
    ASSERT_NE(apart, nullptr);
    EXPECT_EQ(out->job.runs[0].legs[0].method, site::LegMethod::clipped);
    EXPECT_EQ(apart->job.runs[0].legs[0].other_loaded_circuits.high, 0);
}

}  // namespace
}  // namespace toft::lever
