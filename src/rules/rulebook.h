#pragma once
// All rules, in the order in which they are asked: first those that look at the run alone, then
// those that look at its head alone, then the rest.

#include "finding/rule.h"

#include <array>

namespace toft::rules {

/// A rule with its judgement at both depths.
struct Rule {
    const RuleInfo* info;
    Finding<Silent> (*judge)(Silent&, const Case<Silent>&);
    Finding<Recording> (*record)(Recording&, const Case<Recording>&);
};

inline constexpr std::size_t rule_count = 27;
static_assert(rule_count <= most_rules);

const std::array<Rule, rule_count>& rulebook();

/// The rule of that name, or null.
const Rule* find_rule(const std::string& name);

/// Edition of the rules the figures are those of, in a sentence.
const char* edition();

}  // namespace toft::rules
