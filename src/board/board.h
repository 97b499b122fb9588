#pragma once
// The outbuilding's board as it will be fitted: its front with the cover off, what feeds it, what
// is joined to which earth terminal, and the list of its ways. Page: docs/board-picture.md.

#include "answer/answer.h"
#include "drawing/scene.h"
#include "site/job.h"

#include <cstddef>

namespace toft::board {

/// A4 upright at 96 units an inch.
inline constexpr double paper_wide = 794;

/// The board of scheme `scheme_index` of `answer`, which was worked out from `job` (valid). Where
/// the index names no scheme: why none stands. `width` in user units, at least
/// `parts::narrowest_sheet`; the height is what the ways need. The same input gives the same scene.
drawing::Scene board_picture(const site::Job& job, const answer::Answer& answer,
                             std::size_t scheme_index, double width = paper_wide);

}  // namespace toft::board
