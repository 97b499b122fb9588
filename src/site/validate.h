#pragma once
// What must hold between the parts of a job: ids are unique, runs lead from the origin to every
// building, those in one trench fit together, the buildings fed have a load. Ranges of single
// figures are the reader's business (codec).

#include "base/outcome.h"
#include "site/job.h"

namespace toft::site {

/// Changes of cable along one run.
inline constexpr std::size_t most_changes = 3;

/// All faults of the job; empty when it can be designed.
/// `need_no_load` are kinds of circuit that need state neither load nor device: the tables know
/// their usual rating, or they draw nothing.
Faults validate(const Job& job, const std::vector<CircuitKind>& need_no_load = {});

}  // namespace toft::site
