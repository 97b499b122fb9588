#pragma once
// One scheme as a single-line diagram for the network operator and the board's door: supply, the
// house's end, the run, the outbuilding's earth and its circuits, with IEC 60617 symbols drawn as
// shapes and the figures beside them.

#include "answer/answer.h"
#include "diagram/columns.h"
#include "drawing/scene.h"
#include "site/job.h"

#include <cstddef>

namespace toft::diagram {

/// The diagram of scheme `scheme_index` of `answer`, which was worked out from `job` (valid). Where
/// the index names no scheme: the supply, and that nothing follows. `width` in user units, at least
/// `narrowest_sheet`; the height is what the words need, on a roomy sheet at least that of A4. The
/// same input gives the same scene.
drawing::Scene single_line(const site::Job& job, const answer::Answer& answer,
                           std::size_t scheme_index, double width = paper_wide);

}  // namespace toft::diagram
