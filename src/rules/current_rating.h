#pragma once
// The cable carries what its device lets through for ever.
// Page: docs/methods/current-rating.md.

#include "finding/rule.h"

namespace toft::rules {

extern const RuleInfo current_rating_rule;

template <class L>
Finding<L> current_rating(L& ledger, const Case<L>& c);

}  // namespace toft::rules
