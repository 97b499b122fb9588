#include "rules/rulebook.h"

#include "support/catalogue.h"
#include "support/draws.h"
#include "support/judging.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <set>

namespace toft::rules {
namespace {

TEST(Rulebook, EveryRuleHasANameOfItsOwnAndSaysWhatItStandsOn) {
    std::set<std::string> names;
    for (const Rule& rule : rulebook()) {
        const RuleInfo& info = *rule.info;
        EXPECT_TRUE(names.insert(info.name).second) << info.name;
        EXPECT_STRNE(info.title, "") << info.name;
        EXPECT_STRNE(info.clause, "") << info.name;
        EXPECT_STRNE(info.reads, "") << info.name;
    }
}

TEST(Rulebook, RunsComeFirstThenHeadsThenPairs) {
    Sees last = Sees::run;
    for (const Rule& rule : rulebook()) {
        EXPECT_GE(rule.info->sees, last) << rule.info->name;
        last = rule.info->sees;
    }
}

TEST(Rulebook, ARuleOfTheRunOrTheHeadNeedsNoFigureOfTheOther) {
    for (const Rule& rule : rulebook()) {
        if (rule.info->sees == Sees::head) {
            EXPECT_EQ(rule.info->needs, study::Stage::none) << rule.info->name;
        } else if (rule.info->sees == Sees::run) {
            EXPECT_LE(rule.info->needs, study::Stage::circuits) << rule.info->name;
        }
    }
}

TEST(Rulebook, OnlyRatingDropClearingHeatAndLoadCountAsHeadroom) {
    std::set<std::string> graded;
    for (const Rule& rule : rulebook()) {
        if (rule.info->graded) graded.insert(rule.info->name);
    }
    EXPECT_EQ(graded, (std::set<std::string>{"overload", "current-rating", "voltage-drop",
                                             "disconnection", "fault-heat"}));
}

TEST(Rulebook, FindsARuleByName) {
    for (const Rule& rule : rulebook()) EXPECT_EQ(find_rule(rule.info->name), &rule);
    EXPECT_EQ(find_rule("good-luck"), nullptr);
    EXPECT_EQ(find_rule(""), nullptr);
}

TEST(Rulebook, TheEditionNamesTheOneThatGovernsAndWasNotSeen) {
    const std::string edition = rules::edition();
    EXPECT_NE(edition.find("BS 7671:2018"), std::string::npos);
    EXPECT_NE(edition.find("Amendment 4:2026"), std::string::npos);
    EXPECT_NE(edition.find("not seen"), std::string::npos);
}

RC_GTEST_PROP(Rulebook, WhatIsRecordedIsWhatIsJudged, ()) {
    const support::Drawn drawn = *support::any_drawn();
    const site::Job job = support::job_of(drawn);
    for (const Rule& rule : rulebook()) {
        RC_ASSERT(support::recorded_alike(rule.info->name, job, support::scheme_of(drawn)));
    }
}

RC_GTEST_PROP(Rulebook, EveryFindingIsOfItsRuleAndAgreesWithItsFigures, ()) {
    const support::Drawn drawn = *support::any_drawn();
    const auto evaluation = support::evaluated(support::job_of(drawn), support::scheme_of(drawn));
    for (std::size_t i = 0; i < rule_count; ++i) {
        const auto& f = evaluation.findings[i];
        RC_ASSERT(f.rule == rulebook()[i].info);
        if (f.verdict == Verdict::not_known) {  // else only the search can say that
            RC_ASSERT(!support::prepared(support::job_of(drawn)).unsaid.empty());
        }
        if (!f.limited) continue;
        if (f.verdict == Verdict::meets) RC_ASSERT(f.use <= 1 + 2e-9);
        if (f.use > 1 + 2e-9) RC_ASSERT(f.verdict != Verdict::meets);
    }
}

}  // namespace
}  // namespace toft::rules
