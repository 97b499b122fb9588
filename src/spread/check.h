#pragma once
// What may be wrong with a problem, all at once.

#include "base/outcome.h"
#include "spread/problem.h"

namespace toft::spread {

/// Places are written /branches/3/options/0.
Faults faults_of(const Problem& problem);

}  // namespace toft::spread
