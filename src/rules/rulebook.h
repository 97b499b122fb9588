#pragma once
// All rules, in the order in which they are asked: first those that look at the run alone, then
// those that look at its head alone, then the rest.

#include "finding/rule.h"

#include <array>

namespace toft::rules {

/// A rule with its judgement at one depth.
template <class L>
struct RuleAt {
    const RuleInfo* info;
    Finding<L> (*judge)(L&, const Case<L>&);
};

using Rule = RuleAt<Silent>;

inline constexpr std::size_t rule_count = 27;
static_assert(rule_count <= most_rules);

/// All rules at that depth, always in the same order.
template <class L>
const std::array<RuleAt<L>, rule_count>& rulebook_at();
template <>
const std::array<RuleAt<Silent>, rule_count>& rulebook_at();
template <>
const std::array<RuleAt<Recording>, rule_count>& rulebook_at();

/// … without working.
const std::array<Rule, rule_count>& rulebook();

/// The rule of that name, or null.
const Rule* find_rule(const std::string& name);

/// Edition of the rules the figures are those of, in a sentence.
const char* edition();

}  // namespace toft::rules
