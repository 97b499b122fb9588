#include "tolerance/tornado.h"

#include "support/judging.h"
#include "varying.h"

#include <gtest/gtest.h>

namespace toft::tolerance {
namespace {

TEST(Tornado, EachFigureSwingsAloneAndTheWidestComesFirst) {
    site::Job job = support::plain_job();
    job.runs[0].legs[0].length = support::between(metres(20), metres(40));
    job.buildings[1].load = support::between(amperes(15), amperes(21));
    job.ground.temperature = support::between(celsius(14), celsius(16));
    const Place place = place_of(job);
    const auto varied = varied_in(place, stated_only());
    const study::RunScheme scheme = thin_scheme();
    const Tornado found = tornado_of({place, varied, scheme});
    ASSERT_EQ(found.swings.size(), 3u);
    for (std::size_t i = 1; i < found.swings.size(); ++i) {
        EXPECT_GE(found.swings[i - 1].size(), found.swings[i].size());
    }
    for (const Swing& swing : found.swings) {
        site::Job at = of_length(job, 30);
        at.buildings[1].load = support::measured(amperes(18));
        at.ground.temperature = support::measured(celsius(15));
        EXPECT_NEAR(found.likely.headroom, support::evaluated(at, scheme).headroom, 1e-12);
        const Varied& v = varied[swing.varied];
        v.set(at, v.high, v.high);
        EXPECT_NEAR(swing.high.headroom, support::evaluated(at, scheme).headroom, 1e-12);
        v.set(at, v.low, v.low);
        EXPECT_NEAR(swing.low.headroom, support::evaluated(at, scheme).headroom, 1e-12);
    }
}

TEST(Tornado, ASchemeThatFailsIsNotSound) {
    const site::Job far = of_length(support::plain_job(), 400);
    EXPECT_FALSE(standing_in(place_of(far), far, thin_scheme()).sound);
    const site::Job near = of_length(support::plain_job(), 15);
    EXPECT_EQ(standing_in(place_of(near), near, thin_scheme()).sound,
              support::first_failure(support::evaluated(near, thin_scheme())).empty());
}

}  // namespace
}  // namespace toft::tolerance
