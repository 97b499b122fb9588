#pragma once
// A cable without earthed covering hidden in a wall, and the residual current device it needs.

#include "finding/rule.h"

namespace toft::rules {

extern const RuleInfo hidden_cable_rule;

template <class L>
Finding<L> hidden_cable(L& ledger, const Case<L>& c);

}  // namespace toft::rules
