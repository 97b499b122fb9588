#include "search/evaluate.h"

#include <algorithm>
#include <limits>

namespace toft::search {

namespace {

using study::BuildingEarthing;
using study::Protective;

rules::Finding<Silent> judge(const rules::Rule& rule, const study::Setting<Silent>& setting,
                             const study::RunScheme& scheme, study::Figures<Silent>& figures) {
    Silent silent;
    study::work_out(silent, setting, scheme, rule.info->needs, figures);
    return rule.judge(silent, rules::Case<Silent>{setting, scheme, figures});
}

double rank_of(const tables::Catalogue& catalogue, BuildingEarthing earthing,
               Protective protective) {
    double rank = 0;
    for (const tables::Dependability& row : catalogue.dependability) {
        if (row.earthing == study::earthing_word(earthing) &&
            row.protective == study::protective_word(protective)) {
            rank = row.rank.value;
        }
    }
    return rank;
}

}  // namespace

void add_item(std::string_view word, std::vector<price::Item>& items) {
    bool found = false;
    const price::Item item = price::item_of(word, found);
    if (found && std::find(items.begin(), items.end(), item) == items.end()) items.push_back(item);
}

Ranks ranks_of(const tables::Catalogue& catalogue) {
    Ranks ranks{};
    for (std::size_t e = 0; e < ranks.size(); ++e) {
        for (std::size_t p = 0; p < ranks[e].size(); ++p) {
            ranks[e][p] =
                rank_of(catalogue, static_cast<BuildingEarthing>(e), static_cast<Protective>(p));
        }
    }
    return ranks;
}

double dependability(const Ranks& ranks, const study::RunScheme& scheme) {
    const auto& of_earthing = ranks[static_cast<std::size_t>(scheme.earthing)];
    double least = std::numeric_limits<double>::max();
    for (const study::Stretch& laid : scheme.laid()) {
        least = std::min(least, of_earthing[static_cast<std::size_t>(laid.protective)]);
    }
    return least;
}

double dependability(const tables::Catalogue& catalogue, const study::RunScheme& scheme) {
    double least = std::numeric_limits<double>::max();
    for (const study::Stretch& laid : scheme.laid()) {
        least = std::min(least, rank_of(catalogue, scheme.earthing, laid.protective));
    }
    return least;
}

void count_headroom(const rules::Finding<Silent>& finding, double& headroom,
                    const rules::RuleInfo*& governed_by) {
    if (!finding.limited || !finding.rule->graded) return;
    if (governed_by && 1 - finding.use >= headroom) return;
    headroom = 1 - finding.use;
    governed_by = finding.rule;
}

void evaluate(const study::Setting<Silent>& setting, const study::RunScheme& scheme,
              Evaluation& evaluation) {
    evaluation.figures.done = study::Stage::none;
    evaluation.worst = rules::Verdict::meets;
    evaluation.headroom = 1;
    evaluation.governed_by = nullptr;
    const auto& rules = rules::rulebook();
    for (std::size_t i = 0; i < rules.size(); ++i) {
        rules::Finding<Silent>& finding = evaluation.findings[i];
        finding = judge(rules[i], setting, scheme, evaluation.figures);
        if (evaluation.worst < finding.verdict) evaluation.worst = finding.verdict;
        count_headroom(finding, evaluation.headroom, evaluation.governed_by);
    }
}

bool surely_met(const rules::Finding<Silent>& finding) {
    if (finding.verdict == rules::Verdict::fails) return false;
    if (finding.rule->sees != rules::Sees::head) return true;
    if (finding.verdict == rules::Verdict::not_known) return false;
    return !finding.limited || finding.verdict != rules::Verdict::caution;
}

rules::Finding<Silent> finding_of_one(const study::Setting<Silent>& setting,
                                      const study::RunScheme& scheme, std::size_t index) {
    study::Figures<Silent> figures;
    return judge(rules::rulebook()[index], setting, scheme, figures);
}

rules::Verdict judge_one(const study::Setting<Silent>& setting, const study::RunScheme& scheme,
                         std::size_t index) {
    study::Figures<Silent> figures;
    return judge(rules::rulebook()[index], setting, scheme, figures).verdict;
}

}  // namespace toft::search
