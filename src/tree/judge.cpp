#include "tree/judge.h"

#include "base/limit.h"

#include <algorithm>

namespace toft::tree {

namespace {

using rules::Sees;
using rules::Verdict;
using study::RunScheme;

bool above(const rules::Finding<Silent>& finding, const Floor& floor) {
    if (finding.verdict == Verdict::fails) return false;
    if (!finding.limited || !finding.rule->graded) return true;
    return within(finding.use, 1 - floor.headroom);
}

/// Each once.
void add_asked(const rules::Finding<Silent>& finding, std::vector<price::Item>& items) {
    std::vector<price::Item> asked;
    search::add_remedy(finding, asked);
    for (const price::Item item : asked) {
        if (std::find(items.begin(), items.end(), item) == items.end()) items.push_back(item);
    }
}

}  // namespace

RunJudge::RunJudge(const Workplace& at, std::size_t run, int phases,
                   const study::Incoming* incoming)
    : at_(at) {
    Silent silent;
    study::RunAt where{run, phases, at.memo};
    where.incoming = incoming;
    setting_ = study::prepare(silent, at.catalogue, at.job, where, at.corner);
    year_ = loss::year_of(silent, setting_);
}

bool RunJudge::fits_trenches(const RunScheme& scheme) const {
    for (std::size_t i = 0; i < setting_.legs.size(); ++i) {
        const bool pair = scheme.stretch[setting_.legs[i].stretch].parallel > 1;
        if (pair && !setting_.run->legs[i].trench.empty()) return false;
    }
    return true;
}

bool RunJudge::meets(Sees sees, const RunScheme& scheme, const Floor& floor,
                     study::Figures<Silent>& figures) {
    Silent silent;
    asked_.clear();
    for (const rules::Rule& rule : rules::rulebook()) {
        if (rule.info->sees != sees || rule.info->only_cautions) continue;
        study::work_out(silent, setting_, scheme, rule.info->needs, figures);
        const rules::Case<Silent> shown{setting_, scheme, figures};
        const auto finding = rule.judge(silent, shown);
        if (!above(finding, floor)) return false;
        add_asked(finding, asked_);
    }
    return true;
}

Judged RunJudge::judge(const RunScheme& scheme, const Floor& floor) {
    search::evaluate(setting_, scheme, evaluation_);
    std::vector<price::Item> remedies;
    bool sound = search::dependability(at_.catalogue, scheme) >= floor.dependability &&
                 fits_trenches(scheme);
    for (const auto& finding : evaluation_.findings) {
        if (!finding.rule->only_cautions && !above(finding, floor)) sound = false;
        add_asked(finding, remedies);
    }
    Judged judged = priced(scheme, evaluation_.figures, std::move(remedies));
    judged.sound = sound;
    return judged;
}

Judged RunJudge::priced(const RunScheme& scheme, const study::Figures<Silent>& figures,
                        std::vector<price::Item> remedies) const {
    Silent silent;
    Judged judged;
    judged.price = price::price_of(silent, at_.book, setting_, scheme, {{}, price::wired(figures)});
    judged.once = std::move(remedies);
    judged.lost = loss::over_years(at_.book, setting_, figures, year_).pounds;
    judged.cost = judged.price.total.number() + (at_.over_years ? judged.lost : 0);
    return judged;
}

double price_once(const price::Book& book, const std::vector<price::Item>& once) {
    double sum = 0;
    for (const price::Item item : once) sum += book.one(item).number();
    return sum;
}

}  // namespace toft::tree
