#pragma once
// The house's own earthing conductor and main bonding are good enough to extend.
// Page: docs/methods/house-earthing.md.

#include "finding/rule.h"

namespace toft::rules {

extern const RuleInfo house_earthing_rule;

template <class L>
Finding<L> house_earthing(L& ledger, const Case<L>& c);

}  // namespace toft::rules
