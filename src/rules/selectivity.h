#pragma once
// A fault in one circuit opens that circuit and no more: the operator's fuse over the device at the
// head of the run, and that over the devices of the building's circuits. Never a failure: it costs
// light and a journey. Page: docs/methods/selectivity.md.

#include "finding/rule.h"

namespace toft::rules {

extern const RuleInfo selectivity_rule;

template <class L>
Finding<L> selectivity(L& ledger, const Case<L>& c);

}  // namespace toft::rules
