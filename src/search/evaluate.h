#pragma once
// One scheme against all rules. Nothing is remembered from scheme to scheme and nothing is
// allocated.

#include "price/item.h"
#include "rules/rulebook.h"

#include <array>
#include <string_view>
#include <vector>

namespace toft::search {

struct Evaluation {
    study::Figures<Silent> figures;
    std::array<rules::Finding<Silent>, rules::rule_count> findings;
    rules::Verdict worst = rules::Verdict::meets;
    double headroom = 1;                           ///< 1 minus the largest use of a graded rule
    const rules::RuleInfo* governed_by = nullptr;  ///< that rule
};

/// Rank of the table by earthing and what protects, 0 where it has none.
using Ranks = std::array<std::array<double, 5>, 3>;

Ranks ranks_of(const tables::Catalogue& catalogue);

/// As dependable as the least dependable stretch.
double dependability(const Ranks& ranks, const study::RunScheme& scheme);
double dependability(const tables::Catalogue& catalogue, const study::RunScheme& scheme);

/// Adds that item of the price book, if there is one and it is not among `items` already.
void add_item(std::string_view word, std::vector<price::Item>& items);

/// Adds the items of the price book that the finding asks for, each once.
template <class L>
void add_remedy(const rules::Finding<L>& finding, std::vector<price::Item>& items) {
    add_item(finding.remedy, items);
    for (const char* word : finding.remedies) {
        if (word) add_item(word, items);
    }
}

/// Takes a finding's use into account, if it is one that counts as headroom.
void count_headroom(const rules::Finding<Silent>& finding, double& headroom,
                    const rules::RuleInfo*& governed_by);

/// Every rule, every figure.
void evaluate(const study::Setting<Silent>& setting, const study::RunScheme& scheme,
              Evaluation& evaluation);

/// Met, and known to be: a rule on the head may merely caution where the limit is passed, or where
/// half of what counts is not known.
bool surely_met(const rules::Finding<Silent>& finding);

/// Finding of rule `index` alone, on figures worked out as far as it needs.
rules::Finding<Silent> finding_of_one(const study::Setting<Silent>& setting,
                                      const study::RunScheme& scheme, std::size_t index);

/// Judges rule `index` alone, on figures worked out as far as it needs.
rules::Verdict judge_one(const study::Setting<Silent>& setting, const study::RunScheme& scheme,
                         std::size_t index);

}  // namespace toft::search
