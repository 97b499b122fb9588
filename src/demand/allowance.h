#pragma once
// Published allowances for diversity: how much of several circuits of one load counts. On-Site
// Guide Table A2; the formulas are rows of data/demand/allowance.csv.
// Page: docs/methods/allowance.md.

#include "base/ledger.h"
#include "tables/demand.h"

#include <string>
#include <vector>

namespace toft::demand {

/// Where circuits of one load stand.
template <class L>
struct AllowedAt {
    int line = 0;  ///< for the working; 0: the only one
    const char* of = "";
    /// Current of the largest that draws it whole whatever the row allows; null for none.
    const ValueIn<L, Amperes>* no_less_than = nullptr;
};

/// Demand of circuits of one load, in any order; at least one. By amount: all up to the row's
/// first amperes and its share of the rest; by rank: its shares of the largest, the second and the
/// others. Never more than all of them and the row's extra for each.
template <class L>
ValueIn<L, Amperes> allowed(L& ledger, const tables::Allowance& row,
                            std::vector<ValueIn<L, Amperes>> currents, const AllowedAt<L>& at);

/// "66 %", "10 A and 50 % of the rest", "100 % of the largest and 40 % of the others".
std::string allowance_words(const tables::Allowance& row);

}  // namespace toft::demand
