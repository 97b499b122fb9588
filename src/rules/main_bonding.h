#pragma once
// The section of main bonding a supply asks for: by the operator's neutral on TN-C-S (Table 54.8),
// half the earthing conductor, not under 6 nor over 25 mm2, elsewhere (544.1.1). Copper.

#include "rules/rule.h"

namespace toft::rules {

template <class L>
ValueIn<L, SquareMillimetres> bonding_for_combined(L& ledger, const Case<L>& c);

template <class L>
ValueIn<L, SquareMillimetres> bonding_for_separate(L& ledger, const Case<L>& c,
                                                   const ValueIn<L, SquareMillimetres>& earthing);

}  // namespace toft::rules
