#pragma once
// The comparison every rule with a limit makes, in one place: use = value / limit (or limit / value
// where the value must reach the limit), ties go to "meets" (base/limit.h).

#include "base/limit.h"
#include "finding/rule.h"

namespace toft::rules {

/// A finding without figures.
template <class L>
Finding<L> plain_finding(const RuleInfo& rule, Verdict verdict, const char* says) {
    Finding<L> f;
    f.rule = &rule;
    f.verdict = verdict;
    f.says = says;
    return f;
}

template <class L, class Value, class Limit>
Finding<L> keeps_under(L& ledger, const RuleInfo& rule, const Value& value, const Limit& limit) {
    Finding<L> f;
    f.rule = &rule;
    f.limited = true;
    f.value = number_of(plain(value));
    f.limit = number_of(plain(limit));
    f.use = ledger.let({"use", "share of the limit that is used"}, value / limit);
    f.verdict = within(f.value, f.limit) ? Verdict::meets : Verdict::fails;
    return f;
}

template <class L, class Value, class Limit>
Finding<L> reaches(L& ledger, const RuleInfo& rule, const Value& value, const Limit& limit) {
    Finding<L> f = keeps_under(ledger, rule, limit, value);
    std::swap(f.value, f.limit);
    f.at_least = true;
    return f;
}

/// The heavier of two verdicts.
constexpr Verdict heavier(Verdict a, Verdict b) { return a < b ? b : a; }

}  // namespace toft::rules
