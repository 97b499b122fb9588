#pragma once
// What must hold of legs that share a trench.

#include "base/outcome.h"
#include "site/job.h"

namespace toft::site {

/// Only buried legs lie in a trench, each run once in the same one; what lies above is the same for
/// all; and not more cables can lie there than grouping is tabulated for. At most one run to each
/// building is built, so runs to one building count as one cable.
Faults faults_in_trenches(const Job& job);

}  // namespace toft::site
