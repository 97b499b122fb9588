#pragma once
// The cheapest choice for each branch that keeps all limits, proved. Page: docs/methods/spread.md.

#include "base/outcome.h"
#include "spread/problem.h"

namespace toft::spread {

/// Faults of the problem (spread/check.h), or the answer.
Outcome<Answer> solve(const Problem& problem, const Patience& patience = {});

/// Whether a choice keeps all limits, by adding up from the root; tolerance as in base/limit.h.
bool keeps_limits(const Problem& problem, const std::vector<std::size_t>& chosen);

/// Sum of the prices of a choice.
double price_of(const Problem& problem, const std::vector<std::size_t>& chosen);

}  // namespace toft::spread
