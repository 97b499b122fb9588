#pragma once
// Whether the intake carries house and run together. Page: docs/methods/intake-capacity.md.

#include "finding/rule.h"

namespace toft::rules {

extern const RuleInfo intake_capacity_rule;

template <class L>
Finding<L> intake_capacity(L& ledger, const Case<L>& c);

}  // namespace toft::rules
