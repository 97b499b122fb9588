#pragma once
// Volts lost along the run.
// Page: docs/methods/voltage-drop.md.

#include "finding/rule.h"

namespace toft::rules {

extern const RuleInfo voltage_drop_rule;

template <class L>
Finding<L> voltage_drop(L& ledger, const Case<L>& c);

}  // namespace toft::rules
