#pragma once
// The electrode is low enough for the residual current devices that rely on it.
// Page: docs/methods/electrode.md.

#include "finding/rule.h"

namespace toft::rules {

extern const RuleInfo electrode_rule;

template <class L>
Finding<L> electrode(L& ledger, const Case<L>& c);

}  // namespace toft::rules
