#pragma once
// The place the run is fed from can take it.
// Page: docs/methods/feed-point.md.

#include "finding/rule.h"

namespace toft::rules {

extern const RuleInfo feed_point_rule;

template <class L>
Finding<L> feed_point(L& ledger, const Case<L>& c);

}  // namespace toft::rules
