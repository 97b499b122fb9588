#pragma once
// The building may be earthed that way.
// Page: docs/methods/earthing-choice.md.

#include "finding/rule.h"

namespace toft::rules {

extern const RuleInfo earthing_choice_rule;

template <class L>
Finding<L> earthing_choice(L& ledger, const Case<L>& c);

}  // namespace toft::rules
