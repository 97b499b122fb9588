#pragma once
// Rules on the final circuits behind a run, each on the worst of them. They see the run alone: what
// heads it makes no difference to a circuit of the building. Page: docs/methods/final-circuit.md.

#include "finding/rule.h"

namespace toft::rules {

extern const RuleInfo circuit_rating_rule;
extern const RuleInfo circuit_breaking_rule;
extern const RuleInfo circuit_drop_rule;
extern const RuleInfo circuit_disconnection_rule;
extern const RuleInfo circuit_heat_rule;
extern const RuleInfo motor_start_rule;
extern const RuleInfo voltage_rise_rule;

template <class L>
Finding<L> circuit_rating(L& ledger, const Case<L>& c);
template <class L>
Finding<L> circuit_breaking(L& ledger, const Case<L>& c);
template <class L>
Finding<L> circuit_drop(L& ledger, const Case<L>& c);
template <class L>
Finding<L> circuit_disconnection(L& ledger, const Case<L>& c);
template <class L>
Finding<L> circuit_heat(L& ledger, const Case<L>& c);
template <class L>
Finding<L> motor_start(L& ledger, const Case<L>& c);
template <class L>
Finding<L> voltage_rise(L& ledger, const Case<L>& c);

}  // namespace toft::rules
