#include "search/judge.h"

#include "support/catalogue.h"
#include "support/jobs.h"
#include "support/judging.h"
#include "support/random_jobs.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace toft::search {
namespace {

/// With nothing kept from earlier calls.
bool may_meet(const Judge& judge, std::size_t index, const study::RunScheme& scheme) {
    KinderFigures kept;
    return judge.may_meet(index, scheme, kept);
}

using rules::Verdict;
using study::End;

std::size_t index_of(const std::string& name) {
    return static_cast<std::size_t>(rules::find_rule(name) - rules::rulebook().data());
}

study::RunScheme on_a_rod() {
    auto s = support::scheme(support::cable(2, 10), study::Protective::armour, support::fuse(32));
    s.earthing = study::BuildingEarthing::own_electrode;
    return s;
}

Judge judge_of(const site::Job& job, const study::Corner& corner = {}) {
    return Judge(support::catalogue(), job, 0, corner);
}

TEST(Judge, NothingOpenNothingMayMeet) {
    site::Job job = support::plain_job();
    job.buildings[1].reach_of_house_earth = support::measured(metres(1));
    EXPECT_FALSE(may_meet(judge_of(job), index_of("separation"), on_a_rod()));
}

TEST(Judge, AnUnknownReachMayBeEnough) {
    site::Job job = support::plain_job();
    job.buildings[1].reach_of_house_earth = {};
    const Judge judge = judge_of(job);
    EXPECT_TRUE(may_meet(judge, index_of("separation"), on_a_rod()));
    Verdicts verdicts{};
    verdicts[index_of("separation")] = Verdict::not_known;
    EXPECT_EQ(judge.hangs_on(on_a_rod(), verdicts),
              (std::vector<std::string>{"/buildings/1/reach_of_house_earth_m"}));
    EXPECT_TRUE(judge.hangs_on(on_a_rod(), Verdicts{}).empty());
}

TEST(Judge, APinnedFactIsNoLongerOpen) {
    site::Job job = support::plain_job();
    job.buildings[1].reach_of_house_earth = {};
    study::Corner corner;
    corner.except.emplace_back("/buildings/1/reach_of_house_earth_m", End::low);
    EXPECT_FALSE(may_meet(judge_of(job, corner), index_of("separation"), on_a_rod()));
}

TEST(Judge, HangsOnEachFactThatAloneBreaksIt) {
    site::Job job = support::plain_job();
    job.buildings[1].reach_of_house_earth = {};
    site::Metalwork pipe;
    pipe.insulating_section = site::Answer::unknown;
    pipe.bonded_at_house = site::Answer::yes;
    job.buildings[1].metalwork = {pipe};
    Verdicts verdicts{};
    verdicts[index_of("separation")] = Verdict::not_known;
    EXPECT_EQ(judge_of(job).hangs_on(on_a_rod(), verdicts),
              (std::vector<std::string>{"/buildings/1/metalwork/0/insulating_section",
                                        "/buildings/1/reach_of_house_earth_m"}));
}

RC_GTEST_PROP(Judge, APartIsItsRulesJudgedOneByOne, ()) {
    const site::Job job = support::random_job(*rc::gen::arbitrary<unsigned>());
    const Judge judge = judge_of(job);
    const Shop shop = shop_for(judge.setting());
    const auto routes = routes_of(shop, judge.setting());
    const auto heads = heads_of(shop, judge.setting());
    if (routes.empty() || heads.empty()) return;
    const auto& route = routes[*rc::gen::inRange<std::size_t>(0, routes.size())];
    const auto& head = heads[*rc::gen::inRange<std::size_t>(0, heads.size())];
    const auto scheme = scheme_of(route, head);
    for (const auto sees : {rules::Sees::run, rules::Sees::head}) {
        PartJudgement part;
        judge.judge_part(sees, scheme, part);
        std::size_t failures = 0;
        std::size_t first_hard = rules::rule_count;
        for (std::size_t i = 0; i < rules::rule_count; ++i) {
            const rules::RuleInfo& info = *rules::rulebook()[i].info;
            if (info.sees != sees) continue;
            const auto alone = support::finding_of(info.name, job, scheme);
            RC_ASSERT(part.findings[i].verdict == alone.verdict);
            if (alone.verdict != Verdict::fails) continue;
            ++failures;
            const bool hard = !may_meet(judge, i, scheme);
            if (hard && first_hard == rules::rule_count) first_hard = i;
        }
        RC_ASSERT(part.failures == failures);
        RC_ASSERT(part.first_hard == first_hard);
    }
}

RC_GTEST_PROP(Judge, AFateIsThatOfThePartAndIsLeftOffOnceItIsTold, ()) {
    const site::Job job = support::random_job(*rc::gen::arbitrary<unsigned>());
    const Judge judge = judge_of(job);
    const Shop shop = shop_for(judge.setting());
    const auto routes = routes_of(shop, judge.setting());
    const auto heads = heads_of(shop, judge.setting());
    if (routes.empty() || heads.empty()) return;
    const auto scheme =
        scheme_of(routes[*rc::gen::inRange<std::size_t>(0, routes.size())], heads.front());
    Nearest nearest;
    nearest.fill(*rc::gen::element(0.0, 1.2, 5.0, 1e9));
    PartJudgement whole;
    judge.judge_part(rules::Sees::run, scheme, whole);
    PartJudgement fate;
    judge.judge_fate(rules::Sees::run, scheme, &nearest, fate);
    RC_ASSERT(fate.first_hard == whole.first_hard);
    const std::size_t rule = whole.first_hard;
    if (rule == rules::rule_count) {
        RC_ASSERT(fate.failures == whole.failures);
        return;
    }
    const bool near = comes_nearer(whole.findings[rule], nearest[rule]);
    RC_ASSERT((near && whole.failures == 1) == (near && fate.failures == 1));
    judge.judge_fate(rules::Sees::run, scheme, nullptr, fate);
    RC_ASSERT((fate.failures == 1) == (whole.failures == 1));
}

}  // namespace
}  // namespace toft::search
