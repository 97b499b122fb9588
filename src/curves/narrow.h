#pragma once
// The curves on a sheet as narrow as a phone: the paper over the whole width, below it the fault
// currents, what each line is, and the verdicts.

#include "answer/answer.h"
#include "drawing/scene.h"
#include "site/job.h"

namespace toft::curves {

/// As curves_picture says it of narrow sheets; `scheme` is one of the answer's, or null.
drawing::Scene narrow_curves(const tables::Catalogue& catalogue, const site::Job& job,
                             const answer::Answer& answer, const answer::SchemeAnswer* scheme,
                             double width);

}  // namespace toft::curves
