#include "rules/hidden_cable.h"

#include "support/catalogue.h"
#include "support/jobs.h"
#include "support/judging.h"

#include <gtest/gtest.h>

namespace toft::rules {
namespace {

using study::Protective;
using tables::Family;

site::Job hidden(site::Answer concealed) {
    site::Leg leg = support::plain_leg(site::LegMethod::clipped);
    leg.indoors = site::Answer::yes;
    leg.concealed = concealed;
    return support::job_with_legs({leg});
}

study::RunScheme flat(const tables::Device& device) {
    return support::scheme(support::cable(Family::flat_twin_and_earth, 2, 6), Protective::core,
                           device);
}

Finding<Silent> hidden_cable_judged(const site::Job& job, const study::RunScheme& scheme) {
    EXPECT_TRUE(support::recorded_alike("hidden-cable", job, scheme));
    return support::finding_of("hidden-cable", job, scheme);
}

TEST(HiddenCable, ANailThroughTwinAndEarthInAWallMustTripThirtyMilliamperes) {
    const site::Job job = hidden(site::Answer::yes);
    const auto none = hidden_cable_judged(job, flat(support::breaker("B", 32)));
    EXPECT_EQ(none.verdict, Verdict::fails);
    EXPECT_NE(std::string(none.says).find("30 mA"), std::string::npos);
    const auto rcbo = hidden_cable_judged(job, flat(support::device("BS EN 61009", "B", 32)));
    EXPECT_EQ(rcbo.verdict, Verdict::meets);
    EXPECT_DOUBLE_EQ(rcbo.limit, 0.03);
}

TEST(HiddenCable, ADelayedRcdAtTheHeadIsNotEnough) {
    const site::Job job = hidden(site::Answer::yes);
    for (const tables::RunRcd& rcd : support::catalogue().run_rcds) {
        auto s = flat(support::breaker("B", 32));
        s.rcd = &rcd;
        EXPECT_EQ(hidden_cable_judged(job, s).verdict, Verdict::fails);
    }
}

TEST(HiddenCable, InConduitOrInsulationItIsTakenAsHiddenUnlessSomeoneSaysNot) {
    const auto s = flat(support::breaker("B", 32));
    for (auto method : {site::LegMethod::in_conduit, site::LegMethod::in_insulation}) {
        site::Job job = hidden(site::Answer::unknown);
        job.runs[0].legs[0].method = method;
        EXPECT_EQ(hidden_cable_judged(job, s).verdict, Verdict::fails) << site::word(method);
        job.runs[0].legs[0].concealed = site::Answer::no;
        EXPECT_EQ(hidden_cable_judged(job, s).verdict, Verdict::meets) << site::word(method);
    }
}

TEST(HiddenCable, ClippedToASurfaceItIsInSight) {
    const auto s = flat(support::breaker("B", 32));
    EXPECT_EQ(hidden_cable_judged(hidden(site::Answer::no), s).verdict, Verdict::meets);
    EXPECT_EQ(hidden_cable_judged(hidden(site::Answer::unknown), s).verdict, Verdict::meets);
}

TEST(HiddenCable, AnEarthedArmourStopsTheNailItself) {
    const auto s =
        support::scheme(support::cable(3, 6), Protective::core, support::breaker("B", 32));
    const auto found = hidden_cable_judged(hidden(site::Answer::yes), s);
    EXPECT_EQ(found.verdict, Verdict::meets);
    EXPECT_FALSE(found.limited);
}

TEST(HiddenCable, EveryStretchIsLookedAt) {
    const auto& armoured = support::cable(3, 6);
    const auto& bare = support::cable(Family::unarmoured_xlpe_copper, 3, 6);
    site::Job job = hidden(site::Answer::no);
    auto& legs = job.runs[0].legs;
    legs.push_back(legs[0]);
    support::name_cable(legs[0], armoured);
    support::name_cable(legs[1], bare);
    const auto s = support::scheme(
        {support::stretch(armoured, Protective::core), support::stretch(bare, Protective::core)},
        support::breaker("B", 32));
    EXPECT_EQ(hidden_cable_judged(job, s).verdict, Verdict::meets);
    legs[0].concealed = site::Answer::yes;
    EXPECT_EQ(hidden_cable_judged(job, s).verdict, Verdict::meets);
    legs[1].concealed = site::Answer::yes;
    EXPECT_EQ(hidden_cable_judged(job, s).verdict, Verdict::fails);
}

}  // namespace
}  // namespace toft::rules
