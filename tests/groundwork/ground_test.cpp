#include "groundwork/ground.h"

#include "groundwork/grounding.h"
#include "support/random_jobs.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>

namespace toft::answer {
namespace {

using support::between;
using support::measured;

bool asks(const GroundAnswer& answer, const std::string& pointer) {
    for (const UnknownAnswer& u : answer.asked) {
        if (u.fact == pointer) return true;
    }
    return false;
}

/// The figures that are promised to be finite and 0 or more.
std::vector<double> figures_of(const GroundSideAnswer& side) {
    const SeparationAnswer& apart = side.separation;
    std::vector<double> all{side.year.low_ohm,       side.year.high_ohm,    apart.distance_m,
                            apart.house_radius_m,    apart.transferred_low, apart.transferred_high,
                            apart.allowed,           apart.needed_m,        apart.lift_v,
                            side.lost_neutral.load_w};
    for (const RodPointAnswer& p : side.over_length) {
        all.insert(all.end(), {p.length_m, p.low_ohm, p.high_ohm});
    }
    for (const RodTargetAnswer& target : side.targets) {
        for (const RodChoiceAnswer& c : target.choices) {
            all.insert(all.end(), {c.length_m, c.spacing_m, c.high_ohm, c.price});
        }
    }
    for (const LostNeutralWayAnswer& way : side.lost_neutral.ways) {
        all.insert(all.end(),
                   {way.low_v, way.high_v, way.stiff_v, way.electrode_low_a, way.electrode_high_a});
        for (const BodyAnswer& b : way.body) all.insert(all.end(), {b.low_ma, b.high_ma});
        for (const auto& p : way.over_load) all.insert(all.end(), {p.load_w, p.low_v, p.high_v});
    }
    return all;
}

TEST(GroundAnswers, APlainJobIsAnsweredForItsOutbuilding) {
    const GroundAnswer answer = ground_of(support::plain_job());
    EXPECT_EQ(answer.job, "plain");
    ASSERT_EQ(answer.sides.size(), 1u);
    EXPECT_EQ(answer.sides[0].building, "shed");
    EXPECT_EQ(answer.sides[0].electrode_words, "one rod of 2.4 m");
    EXPECT_FALSE(answer.cautions.empty());
    EXPECT_TRUE(answer.asked.empty()) << answer.asked.front().fact;
}

TEST(GroundAnswers, FactsOfTheGroundThatNobodyStatedAreAskedFor) {
    site::Job job = support::plain_job();
    job.ground.read_when.reset();
    EXPECT_TRUE(asks(ground_of(job), "/ground/read_when"));
    job.ground.resistivity = {};
    EXPECT_TRUE(asks(ground_of(job), "/ground/resistivity_ohm_m"));
    job.buildings[1].reach_of_house_earth = {};
    EXPECT_TRUE(asks(ground_of(job), "/buildings/1/reach_of_house_earth_m"));
    job.buildings[1].metalwork_surveyed = false;
    EXPECT_TRUE(asks(ground_of(job), "/buildings/1/metalwork"));
    job.buildings[1].electrode.kind = site::ElectrodeKind::foundation;
    EXPECT_TRUE(asks(ground_of(job), "/buildings/1/electrode/membrane"));
}

TEST(GroundAnswers, WhatIsNotOfTheGroundIsNotAskedHere) {
    site::Job job = support::plain_job();
    job.buildings[1].construction.reset();
    job.runs[0].legs[0].ambient = {};
    job.intake.earthing_conductor = {};
    for (const UnknownAnswer& u : ground_of(job).asked) {
        EXPECT_EQ(u.fact.find("/intake"), std::string::npos);
        EXPECT_EQ(u.fact.find("/legs"), std::string::npos);
    }
}

TEST(GroundAnswers, AMemoOfTheJobChangesNothing) {
    site::Job job = support::plain_job();
    read_pins(job, {{1, 20}, {2, 9}, {4, 3}, {8, 1}});
    Question question = support::question_of(job);
    study::GroundMemo memo;
    question.memo = &memo;
    const auto first = figures_of(ground(question).sides[0]);
    EXPECT_EQ(figures_of(ground(question).sides[0]), first);
    EXPECT_EQ(figures_of(side_of(job)), first);
}

RC_GTEST_PROP(GroundAnswersLaw, AreFiniteAndNoLowerEndStandsAboveItsUpperOne, ()) {
    const site::Job job = support::random_job(*rc::gen::arbitrary<unsigned>());
    const GroundSideAnswer side = side_of(job);
    for (const double figure : figures_of(side)) RC_ASSERT(std::isfinite(figure) && figure >= 0);
    RC_ASSERT(side.year.low_ohm <= side.year.high_ohm);
    RC_ASSERT(side.separation.transferred_low <= side.separation.transferred_high);
    RC_ASSERT(side.separation.transferred_high <= 1);
    for (const RodPointAnswer& p : side.over_length) RC_ASSERT(p.low_ohm <= p.high_ohm);
    for (const LostNeutralWayAnswer& way : side.lost_neutral.ways) {
        RC_ASSERT(way.low_v <= way.high_v);
        RC_ASSERT(way.high_v <= 1.1 * 240);
        RC_ASSERT(way.electrode_low_a <= way.electrode_high_a);
    }
}

}  // namespace
}  // namespace toft::answer
