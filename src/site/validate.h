#pragma once
// What must hold between the parts of a job: ids are unique, runs form a tree from the origin, the
// building fed has a load. Ranges of single figures are the reader's business (codec).

#include "base/outcome.h"
#include "site/job.h"

namespace toft::site {

/// Changes of cable along one run.
inline constexpr std::size_t most_changes = 3;

/// All faults of the job; empty when it can be designed.
Faults validate(const Job& job);

}  // namespace toft::site
