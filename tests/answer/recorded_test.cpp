#include "answer/recorded.h"

#include "answer/reader.h"
#include "support/draws.h"
#include "support/jobs.h"
#include "support/judging.h"
#include "support/questions.h"
#include "support/random_jobs.h"
#include "support/working.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <set>

namespace toft::answer {
namespace {

using support::question_of;

study::RunScheme plain() {
    return support::scheme(support::cable(3, 10), study::Protective::core_and_armour,
                           support::fuse(32));
}

RC_GTEST_PROP(Recorded, EveryFigureHasAWorkingWhoseFormulasGiveItsResults, ()) {
    const site::Job job = support::random_job(*rc::gen::arbitrary<unsigned>());
    const Question q = question_of(job);
    const Recorded recorded(q, support::any_scheme_of(job));
    for (const std::string& name : recorded.names()) {
        RC_LOG() << name << "\n";
        const auto working = recorded.working(name);
        RC_ASSERT(working.has_value());
        RC_ASSERT(!working->lines.empty());
        RC_ASSERT(!working->title.empty());
        for (const std::string& line : unreadable_lines(working->lines)) RC_LOG() << line << "\n";
        RC_ASSERT(unreadable_lines(working->lines) == std::vector<std::string>{});
    }
}

RC_GTEST_PROP(Recorded, FiguresOfDemandReadAsFormulasWhateverIsStatedOfTheLoad, ()) {
    const site::Job job = support::random_demand_job(*rc::gen::arbitrary<unsigned>());
    const Question q = question_of(job);
    const Recorded recorded(q, support::any_scheme_of(job));
    for (const std::string& name : recorded.names()) {
        const bool of_demand = name.rfind("demand.", 0) == 0 || name.rfind("intake", 0) == 0 ||
                               name == "design_current_a";
        if (!of_demand) continue;
        RC_LOG() << name << "\n";
        const auto working = recorded.working(name);
        RC_ASSERT(working.has_value());
        RC_ASSERT(!working->lines.empty());
        for (const std::string& line : unreadable_lines(working->lines)) RC_LOG() << line << "\n";
        RC_ASSERT(unreadable_lines(working->lines) == std::vector<std::string>{});
    }
}

RC_GTEST_PROP(Recorded, FindingsAreTheSilentOnes, ()) {
    const site::Job job = support::random_job(*rc::gen::arbitrary<unsigned>());
    const Question q = question_of(job);
    const auto scheme = support::any_scheme_of(job);
    const Recorded recorded(q, scheme);
    const auto silent = support::evaluated(job, scheme);
    for (std::size_t i = 0; i < rules::rule_count; ++i) {
        const auto& r = recorded.findings()[i];
        const auto& s = silent.findings[i];
        RC_ASSERT(r.verdict == s.verdict);
        if (!s.limited) continue;
        RC_ASSERT(r.use.value == s.use || s.use != s.use);
        const auto working = recorded.working(s.rule->name);
        RC_ASSERT(working.has_value());
        RC_ASSERT(working->value == r.use.value || s.use != s.use);
    }
}

TEST(Recorded, TheLastLineOfAWorkingIsItsFigure) {
    const site::Job job = support::plain_job();
    const Question q = question_of(job);
    const Recorded recorded(q, plain());
    for (const char* name : {"rating_a", "voltage_drop_percent", "loop_impedance_far_ohm",
                             "disconnection_s", "r1_plus_r2_20c_ohm", "price"}) {
        const auto working = recorded.working(name);
        ASSERT_TRUE(working) << name;
        EXPECT_TRUE(support::agree(working->lines.back().value, working->value)) << name;
    }
}

TEST(Recorded, NamesAreRulesWithAFigureThenFiguresEachOnce) {
    const site::Job job = support::plain_job();
    const Question q = question_of(job);
    const Recorded recorded(q, plain());
    std::set<std::string> seen;
    for (const std::string& name : recorded.names()) EXPECT_TRUE(seen.insert(name).second) << name;
    for (const char* name :
         {"overload", "current-rating", "voltage-drop", "disconnection", "fault-heat", "length_m",
          "design_current_a", "loop_impedance_limit_ohm", "loop_impedance_test_limit_ohm",
          "fault_current_near_ka", "fault_current_far_ka", "earth_fault_current_far_a", "price",
          "price.run"}) {
        EXPECT_TRUE(seen.count(name)) << name;
    }
    EXPECT_FALSE(seen.count("bonding-size"));  // nothing to bond: no figure
}

TEST(Recorded, AnUnknownNameHasNoWorking) {
    const site::Job job = support::plain_job();
    const Question q = question_of(job);
    const Recorded recorded(q, plain());
    EXPECT_FALSE(recorded.working("luck"));
    EXPECT_FALSE(recorded.working(""));
    EXPECT_FALSE(recorded.working("bonding-size"));
}

TEST(Recorded, TheBondTheRunProvidesIsALineOfTheRuleThatAsksForIt) {
    site::Job job = support::plain_job();
    site::Metalwork pipe;
    pipe.insulating_section = site::Answer::no;
    job.buildings[1].metalwork = {pipe};
    const Question q = question_of(job);
    const Recorded recorded(q, plain());
    const auto working = recorded.working("bond_equivalent_mm2");
    ASSERT_TRUE(working);
    bool found = false;
    for (const Line& line : working->lines) {
        found = found || (line.symbol == "Sb" && line.value == 10);
    }
    EXPECT_TRUE(found);
}

TEST(Recorded, AColdReadingMayReachEightTenthsOfTheLimit) {
    const site::Job job = support::plain_job();
    const Question q = question_of(job);
    const Recorded recorded(q, plain());
    EXPECT_NEAR(recorded.working("loop_impedance_limit_ohm")->value, 218.5 / 140, 1e-9);
    EXPECT_NEAR(recorded.working("loop_impedance_test_limit_ohm")->value, 0.8 * 218.5 / 140, 1e-9);
}

TEST(Recorded, EveryCitationHasASourceAndComesOnce) {
    const site::Job job = support::plain_job();
    const Question q = question_of(job);
    const Recorded recorded(q, plain());
    std::set<const Citation*> seen;
    for (const Citation* citation : recorded.citations()) {
        EXPECT_TRUE(seen.insert(citation).second);
        bool known = false;
        for (const tables::Source& source : support::catalogue().sources) {
            known = known || source.key == citation->source;
        }
        EXPECT_TRUE(known) << citation->source;
    }
    EXPECT_GT(seen.size(), 10u);
}

}  // namespace
}  // namespace toft::answer
