// A rule that declares to look at the run, or at its head, must look at nothing else of a scheme:
// the search lets one judgement stand for thousands of schemes by it.

#include "search/candidates.h"
#include "support/catalogue.h"
#include "support/jobs.h"
#include "support/judging.h"
#include "support/random_jobs.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>

namespace toft::rules {
namespace {

bool same(double a, double b) { return a == b || (std::isnan(a) && std::isnan(b)); }

bool same(const Finding<Silent>& a, const Finding<Silent>& b) {
    return a.rule == b.rule && a.verdict == b.verdict && a.limited == b.limited &&
           same(a.value, b.value) && same(a.limit, b.limit) && same(a.use, b.use) &&
           std::string(a.says) == b.says && std::string(a.remedy) == b.remedy;
}

struct Lists {
    std::vector<search::Route> routes;
    std::vector<search::Head> heads;
};

Lists lists_of(const study::Setting<Silent>& setting) {
    const search::Shop shop = search::shop_for(setting);
    return {search::routes_of(shop, setting), search::heads_of(shop, setting)};
}

Finding<Silent> judged(const Rule& rule, const study::Setting<Silent>& setting,
                       const study::RunScheme& scheme) {
    Silent silent;
    study::Figures<Silent> figures;
    study::work_out(silent, setting, scheme, study::Stage::heat, figures);
    study::work_out(silent, setting, scheme, study::Stage::circuits, figures);
    return rule.judge(silent, Case<Silent>{setting, scheme, figures});
}

RC_GTEST_PROP(RuleSees, ARuleOfTheRunFindsTheSameForAnyHead, ()) {
    const site::Job job = support::random_job(*rc::gen::arbitrary<unsigned>());
    const auto setting = support::prepared(job);
    const Lists lists = lists_of(setting);
    RC_PRE(!lists.routes.empty() && !lists.heads.empty());
    const auto& route = lists.routes[*rc::gen::inRange<std::size_t>(0, lists.routes.size())];
    const auto a = *rc::gen::inRange<std::size_t>(0, lists.heads.size());
    const auto b = *rc::gen::inRange<std::size_t>(0, lists.heads.size());
    for (const Rule& rule : rulebook()) {
        if (rule.info->sees != Sees::run) continue;
        RC_ASSERT(same(judged(rule, setting, search::scheme_of(route, lists.heads[a])),
                       judged(rule, setting, search::scheme_of(route, lists.heads[b]))));
    }
}

RC_GTEST_PROP(RuleSees, ARuleOfTheHeadFindsTheSameForAnyRun, ()) {
    const site::Job job = support::random_job(*rc::gen::arbitrary<unsigned>());
    const auto setting = support::prepared(job);
    const Lists lists = lists_of(setting);
    RC_PRE(!lists.routes.empty() && !lists.heads.empty());
    const auto head = *rc::gen::inRange<std::size_t>(0, lists.heads.size());
    const auto a = *rc::gen::inRange<std::size_t>(0, lists.routes.size());
    const auto b = *rc::gen::inRange<std::size_t>(0, lists.routes.size());
    for (const Rule& rule : rulebook()) {
        if (rule.info->sees != Sees::head) continue;
        const auto first = search::scheme_of(lists.routes[a], lists.heads[head]);
        const auto second = search::scheme_of(lists.routes[b], lists.heads[head]);
        RC_ASSERT(same(judged(rule, setting, first), judged(rule, setting, second)));
    }
}

RC_GTEST_PROP(RuleSees, FiguresAsFarAsARuleNeedsGiveTheSameFindingAsAllFigures, ()) {
    const site::Job job = support::random_job(*rc::gen::arbitrary<unsigned>());
    const auto setting = support::prepared(job);
    const Lists lists = lists_of(setting);
    RC_PRE(!lists.routes.empty() && !lists.heads.empty());
    const auto route = *rc::gen::inRange<std::size_t>(0, lists.routes.size());
    const auto head = *rc::gen::inRange<std::size_t>(0, lists.heads.size());
    const auto scheme = search::scheme_of(lists.routes[route], lists.heads[head]);
    for (const Rule& rule : rulebook()) {
        RC_ASSERT(
            same(support::finding_of(rule.info->name, job, scheme), judged(rule, setting, scheme)));
    }
}

}  // namespace
}  // namespace toft::rules
