#pragma once
// One rule, or all of them, on one scheme of a job, at the worse end of every open fact.

#include "rules/rulebook.h"
#include "search/evaluate.h"
#include "site/job.h"

#include <string>

namespace toft::support {

/// The finding of the rule of that name; the rule must exist. Figures are worked out as far as that
/// rule says it needs, no further.
rules::Finding<Silent> finding_of(const std::string& rule, const site::Job& job,
                                  const study::RunScheme& scheme);

/// The recorded finding of the rule is the same as the silent one, in every field.
bool recorded_alike(const std::string& rule, const site::Job& job, const study::RunScheme& scheme);

/// All rules.
search::Evaluation evaluated(const site::Job& job, const study::RunScheme& scheme);

/// Name of the first rule that fails; empty when none does.
std::string first_failure(const search::Evaluation& evaluation);

}  // namespace toft::support
