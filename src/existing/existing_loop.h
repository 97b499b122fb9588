#pragma once
// Do its conductors read what their length gives? Page: docs/methods/existing-loop.md.

#include "finding/rule.h"

namespace toft::rules {

extern const RuleInfo existing_loop_rule;

template <class L>
Finding<L> existing_loop(L& ledger, const Case<L>& c);

}  // namespace toft::rules
