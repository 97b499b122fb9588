#pragma once
// One scheme against all rules. Nothing is remembered from scheme to scheme and nothing is
// allocated.

#include "price/item.h"
#include "rules/rulebook.h"

#include <array>
#include <vector>

namespace toft::search {

struct Evaluation {
    study::Figures<Silent> figures;
    std::array<rules::Finding<Silent>, rules::rule_count> findings;
    rules::Verdict worst = rules::Verdict::meets;
    double headroom = 1;                           ///< 1 minus the largest use of a graded rule
    const rules::RuleInfo* governed_by = nullptr;  ///< that rule
};

/// As dependable as the least dependable stretch: rank of the table, 0 where it has none.
double dependability(const tables::Catalogue& catalogue, const study::RunScheme& scheme);

/// Adds the item of the price book that the finding asks for, if it asks for one.
template <class L>
void add_remedy(const rules::Finding<L>& finding, std::vector<price::Item>& items) {
    bool found = false;
    const price::Item item = price::item_of(finding.remedy, found);
    if (found) items.push_back(item);
}

/// Takes a finding's use into account, if it is one that counts as headroom.
void count_headroom(const rules::Finding<Silent>& finding, double& headroom,
                    const rules::RuleInfo*& governed_by);

/// Every rule, every figure.
void evaluate(const study::Setting<Silent>& setting, const study::RunScheme& scheme,
              Evaluation& evaluation);

/// Judges rule `index` alone, on figures worked out as far as it needs.
rules::Verdict judge_one(const study::Setting<Silent>& setting, const study::RunScheme& scheme,
                         std::size_t index);

}  // namespace toft::search
