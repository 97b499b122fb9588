#pragma once
// What metal of the outbuilding does against the ground it stands on when the supply loses its
// neutral, for each way to earth the outbuilding, over the load that is on.

#include "drawing/scene.h"
#include "groundwork/ground.h"
#include "site/job.h"

#include <cstddef>

namespace toft::terrain {

/// For outbuilding `side` of `ground`, which was worked out from `job`. `width` in user units, 320
/// to 1400. Where the fault does not apply the sheet says so and shows nothing more. The same input
/// gives the same scene. Page: docs/ground-pictures.md.
drawing::Scene lost_neutral_picture(const site::Job& job, const answer::GroundAnswer& ground,
                                    std::size_t side, double width);

/// What a figure of touch voltage is the limit of; for any other, that it is set elsewhere. None of
/// them is a limit for this fault.
std::string mark_words(double volts);

}  // namespace toft::terrain
