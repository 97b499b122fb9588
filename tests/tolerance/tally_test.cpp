#include "tolerance/tally.h"

#include "varying.h"

#include <gtest/gtest.h>

namespace toft::tolerance {
namespace {

TEST(Tally, CountsWhatHoldsAndKeepsTheLargestUse) {
    const study::RunScheme scheme = thin_scheme();
    Tally tally(scheme, none_sure());
    const std::size_t drop = number_of_rule("voltage-drop");
    // Nothing of either setting looks back at its job while it is counted.
    const site::Job near = of_length(support::plain_job(), 20);
    const site::Job far = of_length(support::plain_job(), 300);
    const auto good = support::prepared(near);
    const auto bad = support::prepared(far);
    for (int n = 0; n < 2; ++n) {
        tally.count(good);
        tally.count(good);
        tally.count(bad);
        tally.count(good);
        tally.close();
    }
    const Chances found = tally.result(0);
    EXPECT_EQ(found.samples, 8u);
    EXPECT_DOUBLE_EQ(found.by_rule[drop].holds, 0.75);
    search::Evaluation e;
    search::evaluate(bad, scheme, e);
    EXPECT_DOUBLE_EQ(found.largest[drop], e.findings[drop].use);
}

TEST(Tally, NoFailureInNSamplesTellsThreeInN) {
    // The rule of three: with no failure in n, 3/n is the upper bound at 95 % (1 - 0.05^(1/n)).
    const study::RunScheme scheme = thin_scheme();
    Tally tally(scheme, none_sure());
    const site::Job job = of_length(support::plain_job(), 10);
    const auto good = support::prepared(job);
    for (int n = 0; n < 300; ++n) tally.count(good);
    tally.close();
    const Share share = tally.result(0).by_rule[number_of_rule("voltage-drop")];
    EXPECT_EQ(share.holds, 1);
    EXPECT_NEAR(share.error, 0.01, 1e-12);
    EXPECT_NEAR(share.error, 1 - std::pow(0.05, 1.0 / 300), 1e-4);
}

TEST(Tally, BlendsAreHeldAgainstPreparedSettingsFirst) {
    site::Job job = support::plain_job();
    job.runs[0].legs[0].length = support::between(metres(20), metres(60));
    const Place place = place_of(job);
    const auto varied = varied_in(place, stated_only());
    const study::RunScheme scheme = thin_scheme();
    Blend blend(place, varied, 64);
    Tally tally(scheme, none_sure());
    EXPECT_TRUE(tally_blend({place, varied, scheme}, blend, tally, 640));
    EXPECT_EQ(tally.result(0).samples, 64u);  // one group: each value of its pool once
    // A blend of other ranges is not that of this subject.
    auto wider = varied;
    wider[0].set = [](site::Job& j, double low, double high) {
        j.runs[0].legs[0].length = support::between(metres(2 * low), metres(2 * high));
    };
    Tally other(scheme, none_sure());
    EXPECT_FALSE(tally_blend({place, wider, scheme}, blend, other, 640));
}

}  // namespace
}  // namespace toft::tolerance
