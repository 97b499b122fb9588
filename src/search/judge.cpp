#include "search/judge.h"

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

}  // namespace

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
    study::work_out(silent, worse_, scheme, rule.info->needs, figures);
    return rule.judge(silent, rules::Case<Silent>{worse_, scheme, figures});
}

void Judge::judge_part(rules::Sees sees, const study::RunScheme& scheme, PartJudgement& out) const {
    const auto& rules = rules::rulebook();
    KinderFigures kinder;
    out.first_hard = rule_count;
    out.failures = 0;
    out.figures.done = study::Stage::none;
    for (auto& finding : out.findings) finding.rule = nullptr;
    for (std::size_t i = 0; i < rule_count; ++i) {
        if (rules[i].info->sees != sees) continue;
        out.findings[i] = judge(i, scheme, out.figures);
        if (out.findings[i].verdict != Verdict::fails) continue;
        ++out.failures;
        if (out.first_hard == rule_count && !may_meet(i, scheme, kinder)) out.first_hard = i;
    }
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
        // What nobody said leaves a rule not known without breaking it: setting.unsaid tells.
        if (verdicts[i] == Verdict::not_known && judge_one(worse_, scheme, i) == Verdict::fails) {
            unsure.push_back(i);
        }
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
