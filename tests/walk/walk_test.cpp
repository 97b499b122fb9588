#include "walk/walk.h"

#include "support/random_jobs.h"
#include "walk/walking.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace toft::walk {
namespace {

Step bearing(Bearing b, Known known = Known::stated) {
    Step step;
    step.ruling.known = known;
    step.ruling.own(b, "because");
    return step;
}

TEST(Walk, AChoiceStandsAsItsHeaviestStepHasIt) {
    const auto own = [](const std::vector<Step>& steps) {
        return standing_of(steps, Choice::own_electrode);
    };
    EXPECT_EQ(own({}), Standing::open);
    EXPECT_EQ(own({bearing(Bearing::speaks_for)}), Standing::open);
    EXPECT_EQ(own({bearing(Bearing::speaks_against)}), Standing::judgement);
    EXPECT_EQ(own({bearing(Bearing::speaks_against), bearing(Bearing::ruled_out)}),
              Standing::ruled_out);
    EXPECT_EQ(own({bearing(Bearing::ruled_out, Known::unknown)}), Standing::not_known);
    EXPECT_EQ(own({bearing(Bearing::ruled_out), bearing(Bearing::ruled_out, Known::unknown)}),
              Standing::ruled_out);
    EXPECT_EQ(own({bearing(Bearing::required), bearing(Bearing::speaks_against)}),
              Standing::required);
    EXPECT_EQ(own({bearing(Bearing::required), bearing(Bearing::ruled_out)}), Standing::ruled_out);
}

TEST(Walk, StepsKeepTheirOrderAndPartsComeBeforeWhatTheyBringIn) {
    const Walk w = walked(with_pipe());
    EXPECT_EQ(w.building, "shed");
    EXPECT_EQ(w.steps.front().key, "supply");
    for (std::size_t i = 0; i < w.steps.size(); ++i) {
        if (w.steps[i].key != "brings-in") continue;
        EXPECT_EQ(w.steps[i - 1].key, "metalwork-1");
        EXPECT_EQ(w.steps[i - 1].pointer, "/buildings/1/metalwork/0");
    }
}

RC_GTEST_PROP(Walk, EveryStepSaysWhatWasFoundAndEveryObjectionWhy, ()) {
    const Walk w = walked(support::random_job(*rc::gen::arbitrary<unsigned>()));
    for (const Step& step : w.steps) {
        RC_ASSERT(!step.asks.empty() && !step.found.empty() && step.basis != nullptr);
        for (std::size_t i = 0; i < choice_count; ++i) {
            const Consequence& c = step.ruling[static_cast<Choice>(i)];
            RC_ASSERT(c.bearing == Bearing::neutral || *c.why != '\0');
        }
    }
}

RC_GTEST_PROP(Walk, EveryWayTheSupplyOffersStandsSomewhereWithItsRiskAndWhatWouldChangeIt, ()) {
    const Walk w = walked(support::random_job(*rc::gen::arbitrary<unsigned>()));
    RC_ASSERT(w.ways.size() == (w.system == site::Earthing::tt ? 2u : 3u));
    for (const Way& way : w.ways) {
        RC_ASSERT(offered(way.choice, w.system));
        RC_ASSERT(!way.residual_risk.empty());
        RC_ASSERT(!way.would_change.empty());
        RC_ASSERT(way.standing == Standing::open || !way.reasons.empty());
        for (const std::string& key : way.reasons) RC_ASSERT(find_step(w, key) != nullptr);
    }
    RC_ASSERT(!w.conclusion.empty());
}

}  // namespace
}  // namespace toft::walk
