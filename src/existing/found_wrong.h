#pragma once
// What was found wrong at what is there is put right first. Page: docs/methods/found-wrong.md.

#include "finding/rule.h"

namespace toft::rules {

extern const RuleInfo found_wrong_rule;

template <class L>
Finding<L> found_wrong(L& ledger, const Case<L>& c);

}  // namespace toft::rules
