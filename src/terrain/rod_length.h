#pragma once
// How far down a rod must go: its resistance against its length, through the year, over the layers
// of the soil, with the figures it is wanted to meet.

#include "drawing/scene.h"
#include "groundwork/ground.h"
#include "site/job.h"

#include <cstddef>

namespace toft::terrain {

/// For outbuilding `side` of `ground`, which was worked out from `job`. `width` in user units, 320
/// to 1400. Points without a length or without an end are left out; the same input gives the same
/// scene. Page: docs/ground-pictures.md.
drawing::Scene rod_length_picture(const site::Job& job, const answer::GroundAnswer& ground,
                                  std::size_t side, double width);

}  // namespace toft::terrain
