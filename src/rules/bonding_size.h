#pragma once
// Where metalwork enters, the run carries a main bonding conductor of the size the supply asks for.
// Page: docs/methods/bonding-size.md.

#include "finding/rule.h"

namespace toft::rules {

extern const RuleInfo bonding_size_rule;

template <class L>
Finding<L> bonding_size(L& ledger, const Case<L>& c);

}  // namespace toft::rules
