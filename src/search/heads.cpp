#include "search/heads.h"

#include "base/order.h"

#include <map>
#include <tuple>

namespace toft::search {

namespace {

using rules::rule_count;
using rules::Sees;
using rules::Verdict;

bool same_but_rating(const tables::Device& a, const tables::Device& b) {
    return a.standard == b.standard && a.curve == b.curve && a.breaking.value == b.breaking.value;
}

}  // namespace

PartFinding finding_of(const Judge& judge, const price::Book& book, const study::RunScheme& scheme,
                       const PartJudgement& part) {
    PartFinding out;
    out.first_hard = part.first_hard;
    out.failures = part.failures;
    std::vector<price::Item> remedies;
    for (std::size_t i = 0; i < rule_count; ++i) {
        const rules::Finding<Silent>& finding = part.findings[i];
        if (!finding.rule) continue;
        out.verdicts[i] = finding.verdict == Verdict::fails ? Verdict::not_known : finding.verdict;
        count_headroom(finding, out.headroom, out.governed_by);
        add_remedy(finding, remedies);
    }
    Silent silent;
    out.price = price::price_of(silent, book, judge.setting(), scheme,
                                {std::move(remedies), price::wired(part.figures)});
    return out;
}

Span span_of_route(const Judge& judge, const price::Book& book, const study::RunScheme& scheme,
                   const PartFinding& finding) {
    const study::Setting<Silent>* better = judge.better();
    if (!better || priced_alike(judge.setting(), *better, scheme.earthing)) {
        return route_span(book, finding.price, finding.price);
    }
    Silent silent;
    study::Figures<Silent> figures;
    study::work_out(silent, *better, scheme, study::Stage::circuits, figures);
    const auto price = price::price_of(silent, book, *better, scheme, {{}, price::wired(figures)});
    return widened(route_span(book, finding.price, price), out_of_step(book, *better));
}

HeadList::HeadList(const Judge& judge, const price::Book& book, const std::vector<Head>& heads,
                   const std::vector<Route>& routes) {
    if (routes.empty()) return;
    heads_.reserve(heads.size());
    PartJudgement part;
    for (const Head& head : heads) {
        const study::RunScheme scheme = scheme_of(routes.front(), head);
        judge.judge_fate(Sees::head, scheme, nullptr, part);
        JudgedHead& judged = heads_.emplace_back();
        judged.head = head;
        if (part.first_hard != rule_count) {
            judged.miss = part.findings[part.first_hard];
            judged.finding.first_hard = part.first_hard;
            judged.finding.failures = part.failures;
            continue;
        }
        judged.finding = finding_of(judge, book, scheme, part);
        judged.finding.span = head_span(book, judged.finding.price);
    }
    build_ladders();
    sort();
}

price::Price<Silent> together(const price::Price<Silent>& run, const price::Price<Silent>& head,
                              const price::Book& book) {
    price::Price<Silent> p = run;
    p.house_end = head.house_end;
    p.remedies = run.remedies + head.remedies;
    price::add_up(p, book);
    return p;
}

/// Devices of one make stand together in the catalogue, by rising rating.
void HeadList::build_ladders() {
    std::map<std::tuple<const tables::Device*, site::FedFrom, const tables::RunRcd*, bool>,
             std::size_t>
        known;
    const tables::Device* first = nullptr;
    for (JudgedHead& head : heads_) {
        const tables::Device* device = head.head.device;
        if (!first || !same_but_rating(*first, *device)) first = device;
        const auto key = std::make_tuple(first, head.head.fed_from, head.head.rcd, head.head.stays);
        head.ladder = known.emplace(key, known.size()).first->second;
        head.rung = static_cast<std::size_t>(device - first);
    }
    ladders_ = known.size();
}

void HeadList::sort() {
    for (const JudgedHead& head : heads_) {
        const std::size_t rule = head.finding.first_hard;
        if (rule == rule_count) {
            live_.push_back(&head);
            continue;
        }
        if (fallen_[rule].count++ == 0) fallen_[rule].says = head.miss.says;
        if (head.finding.failures == 1) near_misses_.push_back(&head);
    }
    put_in_order(live_, [](const JudgedHead* a, const JudgedHead* b) {
        return a->finding.price.total < b->finding.price.total;
    });
    put_in_order(near_misses_, [](const JudgedHead* a, const JudgedHead* b) {
        return a->miss.use < b->miss.use;
    });
}

std::vector<std::size_t> rules_on_both() {
    std::vector<std::size_t> both;
    for (std::size_t i = 0; i < rule_count; ++i) {
        const rules::RuleInfo& rule = *rules::rulebook()[i].info;
        if (rule.sees == Sees::both && !rule.only_cautions) both.push_back(i);
    }
    return both;
}

std::size_t first_that_moves() {
    const auto& rules = rules::rulebook();
    for (std::size_t i = 0; i < rule_count; ++i) {
        const rules::RuleInfo& rule = *rules[i].info;
        if (rule.sees == Sees::both && !rule.only_cautions && rule.larger != rules::Trend::none) {
            return i;
        }
    }
    return rule_count;
}

}  // namespace toft::search
