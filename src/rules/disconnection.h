#pragma once
// A fault to earth at the far end clears in time, on the system the armour is earthed to.
// Page: docs/methods/disconnection.md.

#include "finding/rule.h"

namespace toft::rules {

extern const RuleInfo disconnection_rule;

template <class L>
Finding<L> disconnection(L& ledger, const Case<L>& c);

}  // namespace toft::rules
