#pragma once
// The picture of tolerances: what each figure alone does to the headroom of a scheme, and the
// chance that its rules hold. Page: docs/methods/tolerance.md.

#include "drawing/scene.h"
#include "outlook/tolerances.h"
#include "site/job.h"

namespace toft::swing {

/// Of the run's building, by its id. Null where there is no scheme to look at. Widths are taken
/// into 320 to 1400.
drawing::Scene tolerance_picture(const site::Job& job, const std::string& building,
                                 const outlook::ToleranceAnswer* tolerances, double width);

}  // namespace toft::swing
