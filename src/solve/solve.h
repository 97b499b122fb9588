#pragma once
// Solving a job as it stands, of one run or of several.

#include "solve/solver.h"

namespace toft::solve {

/// What a valid job comes to, whatever its open facts turn out to be.
Solution solve(const Means& means, const site::Job& job);

/// What those schemes, one for each run in the order of the tree, come to in a valid job, its open
/// facts at their worse end; nothing when they are not sound there.
Solution solve_as(const Means& means, const site::Job& job,
                  const std::vector<study::RunScheme>& schemes);

}  // namespace toft::solve
