#include "search/evaluate.h"

#include "support/catalogue.h"
#include "support/draws.h"
#include "support/jobs.h"
#include "support/judging.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace toft::search {
namespace {

using rules::Verdict;

RC_GTEST_PROP(Evaluate, IsEveryRuleJudgedByItself, ()) {
    const support::Drawn drawn = *support::any_drawn();
    const site::Job job = support::job_of(drawn);
    const auto scheme = support::scheme_of(drawn);
    const auto setting = support::prepared(job);
    Evaluation e;
    evaluate(setting, scheme, e);
    Verdict worst = Verdict::meets;
    double headroom = 1;
    for (std::size_t i = 0; i < rules::rule_count; ++i) {
        const auto alone = support::finding_of(rules::rulebook()[i].info->name, job, scheme);
        RC_ASSERT(e.findings[i].verdict == alone.verdict);
        RC_ASSERT(judge_one(setting, scheme, i) == alone.verdict);
        worst = std::max(worst, alone.verdict);
        if (alone.rule->graded && alone.limited) headroom = std::min(headroom, 1 - alone.use);
    }
    RC_ASSERT(e.worst == worst);
    RC_ASSERT(e.headroom == headroom);
    RC_ASSERT(e.governed_by != nullptr && e.governed_by->graded);
}

RC_GTEST_PROP(Evaluate, RemembersNothingFromSchemeToScheme, ()) {
    const support::Drawn a = *support::any_drawn();
    const support::Drawn b = *support::any_drawn();
    const site::Job job_a = support::job_of(a);
    const site::Job job_b = support::job_of(b);
    Evaluation used;
    evaluate(support::prepared(job_a), support::scheme_of(a), used);
    evaluate(support::prepared(job_b), support::scheme_of(b), used);
    const Evaluation fresh = support::evaluated(job_b, support::scheme_of(b));
    RC_ASSERT(used.headroom == fresh.headroom);
    RC_ASSERT(used.worst == fresh.worst);
    RC_ASSERT(used.governed_by == fresh.governed_by);
    RC_ASSERT(used.figures.zs_far == fresh.figures.zs_far);
    RC_ASSERT(used.figures.drop == fresh.figures.drop);
}

TEST(Evaluate, HeadroomIsWhatTheTightestGradedRuleLeaves) {
    const auto scheme =
        support::scheme(support::cable(2, 16), study::Protective::armour, support::fuse(32));
    site::Job job = support::plain_job();  // 20 A behind 32 A
    job.intake.demand = support::measured(amperes(40));
    const Evaluation e = support::evaluated(job, scheme);
    // Nobody said which circuits there are: selectivity is not known.
    EXPECT_EQ(e.worst, Verdict::caution);
    EXPECT_STREQ(e.governed_by->name, "overload");
    EXPECT_DOUBLE_EQ(e.headroom, 1 - 20.0 / 32);
}

TEST(Evaluate, AFindingThatIsNotGradedOrHasNoFigureIsNoHeadroom) {
    double headroom = 1;
    const rules::RuleInfo* by = nullptr;
    rules::Finding<Silent> f;
    f.rule = rules::find_rule("bonding-size")->info;
    f.limited = true;
    f.use = 0.9;
    count_headroom(f, headroom, by);
    EXPECT_EQ(by, nullptr);
    f.rule = rules::find_rule("overload")->info;
    f.limited = false;
    count_headroom(f, headroom, by);
    EXPECT_EQ(by, nullptr);
    f.limited = true;
    count_headroom(f, headroom, by);
    EXPECT_STREQ(by->name, "overload");
    EXPECT_NEAR(headroom, 0.1, 1e-12);
    f.rule = rules::find_rule("voltage-drop")->info;  // of equals the first stays
    count_headroom(f, headroom, by);
    EXPECT_STREQ(by->name, "overload");
}

TEST(Evaluate, AHouseOfUnknownDemandSurelyMeetsNothingAboutItsIntake) {
    const auto number =
        static_cast<std::size_t>(rules::find_rule("intake-capacity") - rules::rulebook().data());
    site::Job job = support::plain_job();
    const auto scheme = support::scheme(support::cable(3, 10), study::Protective::core,
                                        support::device("BS EN 60898", "B", 32));
    const auto met = [&] {
        return surely_met(finding_of_one(support::prepared(job), scheme, number));
    };
    job.intake.service_fuse = site::NamedDevice{"BS 88-3", "", amperes(80)};
    job.intake.demand = support::measured(amperes(20));
    EXPECT_TRUE(met());
    job.intake.demand = support::measured(amperes(70));
    EXPECT_FALSE(met()) << "house and run are more than the fuse";
    job.intake.demand = {};
    job.buildings[0].circuits.clear();
    EXPECT_FALSE(met()) << "nobody knows what the house draws";
}

TEST(Evaluate, RanksLookedUpOnceAreThoseOfTheTable) {
    const Ranks ranks = ranks_of(support::catalogue());
    bool some = false;
    study::RunScheme scheme =
        support::scheme(support::cable(3, 10), study::Protective::armour, support::fuse(32));
    for (const auto earthing :
         {study::BuildingEarthing::supply_earth, study::BuildingEarthing::shared_electrode,
          study::BuildingEarthing::own_electrode}) {
        for (const auto protective :
             {study::Protective::armour, study::Protective::core,
              study::Protective::core_and_armour, study::Protective::separate,
              study::Protective::armour_and_separate}) {
            scheme.earthing = earthing;
            scheme.first().protective = protective;
            const double rank = dependability(support::catalogue(), scheme);
            EXPECT_EQ(dependability(ranks, scheme), rank);
            some = some || rank > 0;
        }
    }
    EXPECT_TRUE(some);
}

}  // namespace
}  // namespace toft::search
