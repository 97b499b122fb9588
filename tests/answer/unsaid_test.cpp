// What nobody said: every scheme hangs on it.

#include "answer/levers.h"
#include "answer/unknowns.h"
#include "support/jobs.h"
#include "support/questions.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace toft::answer {
namespace {

using support::question_of;
using Pointers = std::vector<std::string>;

const std::string demand = "/intake/demand_a";
const std::string depth = "/runs/0/legs/0/depth_m";
const std::string electrode = "/intake/electrode_ohm";

/// A TT house: its electrode reads 60 ohm.
site::Job tt_house() {
    site::Job job = support::plain_job();
    job.intake.earthing = site::Earthing::tt;
    job.intake.ze = {};
    job.intake.electrode = support::measured(ohms(60));
    return job;
}

const FindingAnswer* finding(const SchemeAnswer& s, const std::string& rule) {
    for (const FindingAnswer& f : s.findings) {
        if (f.rule == rule) return &f;
    }
    return nullptr;
}

/// Every scheme is shown on condition of that fact, and no rule about it is met.
void expect_conditional(const site::Job& job, const std::string& fact, const std::string& rule) {
    const Answer a = design(question_of(job));
    EXPECT_FALSE(a.sound);
    EXPECT_TRUE(only_conditional(a)) << "something is recommended all the same";
    EXPECT_EQ(a.search.sound, 0);
    EXPECT_GT(a.search.conditional, 0);
    for (const SchemeAnswer& s : a.schemes) {
        EXPECT_EQ(s.conditional_on, Pointers{fact}) << s.key;
        ASSERT_TRUE(finding(s, rule)) << s.key;
        EXPECT_EQ(finding(s, rule)->verdict, rules::Verdict::not_known) << s.key;
        for (const std::string& caution : s.cautions) {
            EXPECT_NE(caution, finding(s, rule)->says) << "said once";
        }
    }
    ASSERT_FALSE(a.unknowns.empty());
    EXPECT_EQ(a.unknowns.front().fact, fact);
    EXPECT_EQ(a.unknowns.front().effect, "decides");
    EXPECT_TRUE(a.unknowns.front().ask);
    EXPECT_FALSE(a.unknowns.front().question.empty());
}

TEST(Unsaid, AHouseElectrodeNobodyMeasuredLeavesEverySchemeOnCondition) {
    site::Job job = tt_house();
    EXPECT_TRUE(design(question_of(job)).sound);
    job.intake.electrode = {};
    expect_conditional(job, electrode, "disconnection");
}

TEST(Unsaid, ALoopReadOnTtIsAReadingOfTheElectrodeToo) {
    site::Job job = tt_house();
    job.intake.electrode = {};
    job.intake.ze = support::measured(ohms(60));
    EXPECT_TRUE(design(question_of(job)).sound);
}

TEST(Unsaid, ADepthNobodyStatedLeavesEverySchemeOnCondition) {
    site::Job job = support::plain_job();
    EXPECT_TRUE(design(question_of(job)).sound);
    job.runs[0].legs[0].depth = {};
    expect_conditional(job, depth, "suitability");
}

TEST(Unsaid, AHouseOfUnknownDemandLeavesEverySchemeOnCondition) {
    site::Job job = support::plain_job();
    job.intake.demand = {};
    expect_conditional(job, demand, "intake-capacity");
}

TEST(Unsaid, WhatIsRecommendedIsTheSameAsWithAFactThatTurnsOutWell) {
    site::Job job = support::plain_job();
    const std::string known = design(question_of(job)).schemes.front().key;
    job.intake.demand = {};
    job.runs[0].legs[0].depth = support::between(metres(0.6), metres(0.6));
    EXPECT_EQ(design(question_of(job)).schemes.front().key, known);
}

TEST(Unsaid, AskAndLeversSayThatItStandsOnConditions) {
    site::Job job = support::plain_job();
    job.intake.demand = {};
    const AskAnswer asked = ask(question_of(job));
    EXPECT_FALSE(asked.sound);
    EXPECT_TRUE(asked.conditional);
    EXPECT_FALSE(asked.stands.empty());
    const LeversAnswer changed = levers(question_of(job));
    EXPECT_FALSE(changed.sound);
    EXPECT_TRUE(changed.conditional);
}

TEST(Unsaid, OfSeveralRunsWhatOneLacksIsAConditionOfTheWhole) {
    site::Job job = support::plain_job();
    site::Building barn = job.buildings[1];
    barn.id = "barn";
    job.buildings.push_back(barn);
    site::Run further = job.runs[0];
    further.id = "further";
    further.from = "shed";
    further.to = "barn";
    job.runs.push_back(further);
    ASSERT_TRUE(design(question_of(job)).sound);
    job.runs[1].legs[0].depth = {};
    const Answer a = design(question_of(job));
    EXPECT_FALSE(a.sound);
    ASSERT_TRUE(only_conditional(a));
    EXPECT_EQ(a.schemes.front().conditional_on, Pointers{"/runs/1/legs/0/depth_m"});
    EXPECT_EQ(unsaid_of(question_of(job)), Pointers{"/runs/1/legs/0/depth_m"});
    const AskAnswer asked = ask(question_of(job));
    EXPECT_TRUE(asked.conditional);
    EXPECT_EQ(asked.unknowns.front().fact, "/runs/1/legs/0/depth_m");
}

}  // namespace
}  // namespace toft::answer
