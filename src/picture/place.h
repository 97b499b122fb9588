#pragma once
// One picture of the place with one scheme on it: house, ground, run and outbuilding in section
// along the route; the cable cut through; how its armour ends; how much of each limit is used.

#include "answer/answer.h"
#include "drawing/scene.h"
#include "picture/sketch.h"
#include "picture/stage.h"
#include "site/job.h"

#include <cstddef>

namespace toft::picture {

/// House, ground, run and outbuilding, their notes not yet placed.
Sketch whole_section(const Stage& stage);

/// The picture of scheme `scheme_index` of `answer`, which was worked out from `job` (valid). Where
/// the index names no scheme, the place alone, with what fell and why. `width` in user units: from
/// `sheet_wide` on the sheet for paper; less, a narrow sheet of that width, at least
/// `narrowest_sheet`, as high as it needs. The same input gives the same scene.
drawing::Scene place_picture(const site::Job& job, const answer::Answer& answer,
                             std::size_t scheme_index, double width = sheet_wide);

}  // namespace toft::picture
