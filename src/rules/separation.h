#pragma once
// A building with its own electrode is out of touch with the house's earth.
// Page: docs/methods/separation.md.

#include "finding/rule.h"

namespace toft::rules {

extern const RuleInfo separation_rule;

template <class L>
Finding<L> separation(L& ledger, const Case<L>& c);

}  // namespace toft::rules
