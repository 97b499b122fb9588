#pragma once
// Time-current curves of one scheme: how soon its device operates, how long the run's conductors
// bear a fault, and the currents of the run between the two.

#include "answer/answer.h"
#include "drawing/scene.h"
#include "site/job.h"

#include <cstddef>

namespace toft::curves {

/// What each line is stands beside the paper on a sheet of this width (user units), and below it
/// on narrower ones.
inline constexpr double paper_wide = 1400;

/// The curves of scheme `scheme_index` of `answer`, which was worked out from `job` (valid) and
/// `catalogue`. Where the index names no scheme, what fell and why. `width` in user units: from
/// `paper_wide` on the sheet for paper; less, a narrow sheet of that width, at least
/// picture::narrowest_sheet, as high as it needs. The same input gives the same scene.
drawing::Scene curves_picture(const tables::Catalogue& catalogue, const site::Job& job,
                              const answer::Answer& answer, std::size_t scheme_index,
                              double width = paper_wide);

}  // namespace toft::curves
