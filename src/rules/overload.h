#pragma once
// The device carries the load.
// Page: docs/methods/overload.md.

#include "finding/rule.h"

namespace toft::rules {

extern const RuleInfo overload_rule;

template <class L>
Finding<L> overload(L& ledger, const Case<L>& c);

}  // namespace toft::rules
