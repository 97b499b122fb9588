#pragma once
// Is the cable that is there fit to stay? Page: docs/methods/existing-cable.md.

#include "finding/rule.h"

namespace toft::rules {

extern const RuleInfo existing_cable_rule;

template <class L>
Finding<L> existing_cable(L& ledger, const Case<L>& c);

}  // namespace toft::rules
