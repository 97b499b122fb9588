#pragma once
// The place on a sheet as narrow as a phone: house, run and outbuilding over the whole width with
// numbers in them, below it what the numbers stand for, the legs, the cable, its ends and the use
// of each limit, one under another.

#include "answer/answer.h"
#include "drawing/scene.h"
#include "site/job.h"

namespace toft::picture {

/// As place_picture says it of narrow sheets; `scheme` is one of the answer's, or null.
drawing::Scene narrow_place(const site::Job& job, const answer::Answer& answer,
                            const answer::SchemeAnswer* scheme, double width);

}  // namespace toft::picture
