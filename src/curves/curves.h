#pragma once
// Time-current curves of one scheme: how soon its device operates, how long the run's conductors
// bear a fault, and the currents of the run between the two.

#include "answer/answer.h"
#include "drawing/scene.h"
#include "site/job.h"

#include <cstddef>

namespace toft::curves {

/// The curves of scheme `scheme_index` of `answer`, which was worked out from `job` (valid) and
/// `catalogue`. Where the index names no scheme, what fell and why. The same input gives the same
/// scene.
drawing::Scene curves_picture(const tables::Catalogue& catalogue, const site::Job& job,
                              const answer::Answer& answer, std::size_t scheme_index);

}  // namespace toft::curves
