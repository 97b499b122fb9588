#pragma once
// Live cores, protective path and armour survive every fault until it is cleared.
// Page: docs/methods/fault-heat.md.

#include "finding/rule.h"

namespace toft::rules {

extern const RuleInfo fault_heat_rule;

template <class L>
Finding<L> fault_heat(L& ledger, const Case<L>& c);

}  // namespace toft::rules
