#pragma once
// How unlike two cables side by side may be and still share the load.

#include "base/ledger.h"
#include "tables/rulebook.h"

namespace toft::existing {

/// Most that one of two may read over the other: with currents I and I (1 + e) over it and its twin
/// the difference is 2 e / (2 + e) of the mean, so e = 2 u / (2 - u) where u is allowed.
template <class L>
ValueIn<L, double> reading_of_equals(L& ledger, const tables::Limits& limits) {
    const auto u = ledger.table({"u", "difference of currents side by side over the design's"},
                                limits.unequal_most);
    return ledger.let({"R.equal", "most that one of two may read over the other"},
                      1.0 + 2.0 * u / (2.0 - u));
}

}  // namespace toft::existing
