#pragma once
// The route on a plan, true to a stated scale: buildings, runs and their legs, surfaces, depths,
// electrodes. Page: docs/ground-sheet.md.

#include "digging/measured.h"
#include "trench/plan.h"

namespace toft::digging {

/// All runs of the works on one plan.
Measured route_plan(const trench::Works& works, const Wanted& wanted);

}  // namespace toft::digging
