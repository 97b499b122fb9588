#include "search/heads.h"

#include <algorithm>

namespace toft::search {

namespace {

using rules::rule_count;
using rules::Sees;
using rules::Verdict;

bool same_but_rating(const Head& a, const Head& b) {
    return a.device->standard == b.device->standard && a.device->curve == b.device->curve &&
           a.device->breaking.value == b.device->breaking.value && a.fed_from == b.fed_from &&
           a.rcd == b.rcd;
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
        bool found = false;
        const price::Item item = price::item_of(finding.remedy, found);
        if (found) remedies.push_back(item);
    }
    Silent silent;
    out.price = price::price_of(silent, book, judge.setting(), scheme, remedies);
    return out;
}

HeadList::HeadList(const Judge& judge, const price::Book& book, const std::vector<Head>& heads,
                   const std::vector<Route>& routes) {
    if (routes.empty()) return;
    for (const Head& head : heads) {
        PartJudgement part;
        const study::RunScheme scheme = scheme_of(routes.front(), head);
        judge.judge_part(Sees::head, scheme, part);
        JudgedHead judged;
        judged.head = head;
        judged.finding = finding_of(judge, book, scheme, part);
        if (part.first_hard != rule_count) judged.miss = part.findings[part.first_hard];
        heads_.push_back(judged);
    }
    build_ladders();
    sort();
}

void HeadList::build_ladders() {
    std::vector<const JudgedHead*> feet;
    for (JudgedHead& head : heads_) {
        std::size_t l = 0;
        while (l < feet.size() && !same_but_rating(feet[l]->head, head.head)) ++l;
        if (l == feet.size()) feet.push_back(&head);
        head.ladder = l;
        for (const JudgedHead& other : heads_) {
            head.rung += same_but_rating(other.head, head.head) &&
                         other.head.device->rating < head.head.device->rating;
        }
    }
    ladders_ = feet.size();
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
    std::stable_sort(live_.begin(), live_.end(), [](const JudgedHead* a, const JudgedHead* b) {
        return a->finding.price.total < b->finding.price.total;
    });
    std::stable_sort(
        near_misses_.begin(), near_misses_.end(),
        [](const JudgedHead* a, const JudgedHead* b) { return a->miss.use < b->miss.use; });
}

std::size_t first_that_moves() {
    const auto& rules = rules::rulebook();
    for (std::size_t i = 0; i < rule_count; ++i) {
        if (rules[i].info->sees == Sees::both && rules[i].info->larger != rules::Trend::none) {
            return i;
        }
    }
    return rule_count;
}

}  // namespace toft::search
