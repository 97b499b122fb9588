#include "tolerance/tolerance.h"

#include "support/examples.h"
#include "support/judging.h"
#include "varying.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace toft::tolerance {
namespace {

site::Job site_with_ranges() {
    site::Job job = support::plain_job();
    job.runs[0].legs[0].length = support::between(metres(20), metres(60));
    job.intake.ze = support::between(ohms(0.1), ohms(0.6));
    job.ground.temperature = support::between(celsius(5), celsius(25));
    job.buildings[1].load = support::between(amperes(10), amperes(24));
    job.ground.resistivity = support::between(ohm_metres(30), ohm_metres(90));
    return job;
}

const RuleOver& rule_of(const Tolerance& found, const std::string& name) {
    for (const RuleOver& r : found.rules) {
        if (name == r.rule->name) return r;
    }
    ADD_FAILURE() << "no rule " << name;
    return found.rules.front();
}

TEST(Tolerance, TheWorstIsThatOfTheWorseEnds) {
    const site::Job job = site_with_ranges();
    const Tolerance found = tolerance_of(place_of(job), thin_scheme(), stated_only());
    site::Job far = of_length(job, 60);
    far.buildings[1].load = support::measured(amperes(24));
    const auto worst = support::evaluated(far, thin_scheme());
    const RuleOver& drop = rule_of(found, "voltage-drop");
    EXPECT_NEAR(drop.worst, worst.findings[number_of_rule("voltage-drop")].use, 1e-12);
    EXPECT_NEAR(drop.reached, drop.worst, 1e-12);
    EXPECT_FALSE(drop.holds_at_worst);
    EXPECT_GT(drop.chance.holds, 0);
    EXPECT_LT(drop.chance.holds, 1);
    EXPECT_LE(found.robust.holds, drop.chance.holds);
}

TEST(Tolerance, ARuleThatHoldsAtItsWorstHoldsForSure) {
    const site::Job job = site_with_ranges();
    const Tolerance found = tolerance_of(place_of(job), thin_scheme(), stated_only());
    int sure = 0;
    for (const RuleOver& r : found.rules) {
        if (!r.holds_at_worst) continue;
        EXPECT_EQ(r.chance.holds, 1) << r.rule->name;
        EXPECT_EQ(r.chance.error, 0) << r.rule->name;
        ++sure;
    }
    EXPECT_GT(sure, 10);
}

TEST(Tolerance, NothingVariesInASurveyOfSingleFiguresTakenAsStated) {
    const site::Job job = of_length(support::plain_job(), 20);
    const Tolerance found = tolerance_of(place_of(job), thin_scheme(), stated_only());
    EXPECT_TRUE(found.varied.empty());
    EXPECT_TRUE(found.tornado.swings.empty());
    const bool sound = support::first_failure(support::evaluated(job, thin_scheme())).empty();
    EXPECT_EQ(found.robust.holds, sound ? 1 : 0);
}

TEST(Tolerance, AnOpenFactStaysAtItsWorseEndAndIsNamed) {
    site::Job job = of_length(support::plain_job(), 20);
    job.intake.ze = {};
    const Tolerance found = tolerance_of(place_of(job), thin_scheme(), stated_only());
    ASSERT_FALSE(found.stays.empty());
    EXPECT_EQ(found.stays.front().pointer, "/intake/ze_ohm");
    const auto worst = support::evaluated(job, thin_scheme());
    const RuleOver& clears = rule_of(found, "disconnection");
    EXPECT_EQ(clears.likely, worst.findings[number_of_rule("disconnection")].use);
}

RC_GTEST_PROP(Tolerance, NoSetOfFiguresIsWorseThanTheWorst, ()) {
    static const site::Job job = site_with_ranges();
    static const Tolerance found = tolerance_of(place_of(job), thin_scheme(), stated_only());
    std::vector<double> values;
    for (const Varied& v : found.varied) {
        values.push_back(v.low + (v.high - v.low) * *rc::gen::inRange(0, 1001) / 1000.0);
    }
    const auto drawn = support::evaluated(job_at(job, found.varied, values), thin_scheme());
    for (const RuleOver& r : found.rules) {
        const auto& finding = drawn.findings[number_of_rule(r.rule->name)];
        if (finding.limited) RC_ASSERT(finding.use <= r.worst * (1 + 1e-9));
        if (r.holds_at_worst) RC_ASSERT(finding.verdict != rules::Verdict::fails);
    }
}

TEST(Tolerance, JobsThatComeWithTheProgramNeedNoSettingOfTheirOwnForEachSample) {
    for (const char* name : {"demo", "tn-s-workshop", "tt-shed"}) {
        const site::Job job = support::example_job(name, support::catalogue());
        Wish wish;
        wish.samples = 4096;
        wish.pool = 64;
        wish.load = 60;
        wish.length = 80;
        const Tolerance found = tolerance_of(place_of(job), thin_scheme(), wish);
        EXPECT_GT(found.samples, found.prepared) << name;
        EXPECT_GT(found.varied.size(), 3u) << name;
    }
}

}  // namespace
}  // namespace toft::tolerance
