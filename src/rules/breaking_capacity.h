#pragma once
// The device can break the largest fault at the origin.
// Page: docs/methods/breaking-capacity.md.

#include "finding/rule.h"

namespace toft::rules {

extern const RuleInfo breaking_capacity_rule;

template <class L>
Finding<L> breaking_capacity(L& ledger, const Case<L>& c);

}  // namespace toft::rules
