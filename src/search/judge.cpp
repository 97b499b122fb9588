#include "search/judge.h"

#include <cmath>

namespace toft::search {

namespace {

using rules::rule_count;
using rules::Verdict;
using study::Corner;
using study::End;

constexpr End kinder_ends[] = {End::better, End::low, End::high};

bool pinned(const Corner& corner, const std::string& pointer) {
    for (const auto& [p, end] : corner.except) {
        if (p == pointer) return true;
    }
    return false;
}

bool any_open(const study::Setting<Silent>& setting, const Corner& corner) {
    for (const study::OpenFact& fact : setting.open) {
        if (!pinned(corner, fact.pointer)) return true;
    }
    return false;
}

bool worked_out(const study::Figures<Silent>& figures, study::Stage stage) {
    using study::Stage;
    if (stage == Stage::circuits) return figures.done >= Stage::current && figures.circuits_done;
    return figures.done >= stage;
}

}  // namespace

void forget(KinderFigures& kept) {
    for (auto& figures : kept) figures.done = study::Stage::none;
}

bool comes_nearer(const rules::Finding<Silent>& finding, double nearest) {
    return finding.limited && std::isfinite(finding.use) && finding.use > 1 &&
           finding.use < nearest;
}

Judge::Judge(const tables::Catalogue& catalogue, const site::Job& job, study::RunAt at,
             const Corner& corner)
    : catalogue_(catalogue), job_(job), run_(at), corner_(corner) {
    Silent silent;
    worse_ = study::prepare(silent, catalogue, job, at, corner);
    if (!any_open(worse_, corner)) return;
    for (End end : kinder_ends) {
        Corner kinder = corner;
        kinder.all = end;
        kinder_.push_back(study::prepare(silent, catalogue, job, at, kinder));
    }
}

rules::Finding<Silent> Judge::judge(std::size_t index, const study::RunScheme& scheme,
                                    study::Figures<Silent>& figures) const {
    Silent silent;
    const rules::Rule& rule = rules::rulebook()[index];
    if (!worked_out(figures, rule.info->needs)) {
        study::work_out(silent, worse_, scheme, rule.info->needs, figures);
    }
    return rule.judge(silent, rules::Case<Silent>{worse_, scheme, figures});
}

template <class Enough>
void Judge::judge_part(rules::Sees sees, const study::RunScheme& scheme, PartJudgement& out,
                       const Enough& enough) const {
    const auto& rules = rules::rulebook();
    forget(out.kinder);
    out.first_hard = rule_count;
    out.failures = 0;
    out.figures.done = study::Stage::none;
    for (auto& finding : out.findings) finding.rule = nullptr;
    for (std::size_t i = 0; i < rule_count; ++i) {
        if (rules[i].info->sees != sees) continue;
        out.findings[i] = judge(i, scheme, out.figures);
        if (out.findings[i].verdict != Verdict::fails) continue;
        ++out.failures;
        if (out.first_hard == rule_count && !may_meet(i, scheme, out.kinder)) out.first_hard = i;
        if (out.first_hard != rule_count && enough()) return;
    }
}

void Judge::judge_part(rules::Sees sees, const study::RunScheme& scheme, PartJudgement& out) const {
    judge_part(sees, scheme, out, [] { return false; });
}

void Judge::judge_fate(rules::Sees sees, const study::RunScheme& scheme, const Nearest* nearest,
                       PartJudgement& out) const {
    judge_part(sees, scheme, out, [&] {
        const std::size_t fallen_to = out.first_hard;
        return out.failures > 1 ||
               (nearest && !comes_nearer(out.findings[fallen_to], (*nearest)[fallen_to]));
    });
}

bool Judge::may_meet(std::size_t index, const study::RunScheme& scheme, KinderFigures& kept) const {
    Silent silent;
    const rules::Rule& rule = rules::rulebook()[index];
    kept.resize(kinder_.size());
    for (std::size_t k = 0; k < kinder_.size(); ++k) {
        study::Figures<Silent>& figures = kept[k];
        if (figures.done > study::Stage::current) figures.done = study::Stage::current;
        study::work_out(silent, kinder_[k], scheme, rule.info->needs, figures);
        const rules::Case<Silent> at{kinder_[k], scheme, figures};
        if (rule.judge(silent, at).verdict != Verdict::fails) return true;
    }
    return false;
}

std::vector<std::string> Judge::hangs_on(const study::RunScheme& scheme,
                                         const Verdicts& verdicts) const {
    std::vector<std::size_t> unsure;
    for (std::size_t i = 0; i < rule_count; ++i) {
        if (verdicts[i] != Verdict::not_known) continue;
        // What nobody said leaves a rule not known without breaking it: setting.unsaid tells.
        const bool said = worse_.unsaid.empty();
        if (said || judge_one(worse_, scheme, i) == Verdict::fails) unsure.push_back(i);
    }
    std::vector<std::string> facts;
    if (unsure.empty()) return facts;
    for (const study::OpenFact& fact : worse_.open) {
        if (breaks(scheme, unsure, fact.pointer)) facts.push_back(fact.pointer);
    }
    if (!facts.empty()) return facts;
    for (const study::OpenFact& fact : worse_.open) facts.push_back(fact.pointer);
    return facts;
}

/// Whether that fact at its worse end breaks the scheme with all others at their better.
bool Judge::breaks(const study::RunScheme& scheme, const std::vector<std::size_t>& unsure,
                   const std::string& pointer) const {
    Corner corner = corner_;
    corner.all = End::better;
    corner.except.emplace_back(pointer, End::worse);
    Silent silent;
    const auto setting = study::prepare(silent, catalogue_, job_, run_, corner);
    for (std::size_t i : unsure) {
        if (judge_one(setting, scheme, i) == Verdict::fails) return true;
    }
    return false;
}

}  // namespace toft::search
