#pragma once
// Cable and separate conductor fit where they lie; buried cable has an earthed covering.
// Page: docs/methods/suitability.md.

#include "finding/rule.h"

namespace toft::rules {

extern const RuleInfo suitability_rule;

template <class L>
Finding<L> suitability(L& ledger, const Case<L>& c);

}  // namespace toft::rules
