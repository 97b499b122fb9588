#pragma once
// Residual current devices where they are required, in an order that lets the right one act.
// Page: docs/methods/residual-current.md.

#include "finding/rule.h"

namespace toft::rules {

extern const RuleInfo residual_current_rule;

template <class L>
Finding<L> residual_current(L& ledger, const Case<L>& c);

}  // namespace toft::rules
