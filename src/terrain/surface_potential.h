#pragma once
// A map of how far the ground round house and outbuilding rises when the house's earth does.

#include "drawing/scene.h"
#include "groundwork/ground.h"
#include "site/job.h"
#include "terrain/surface_map.h"

#include <cstddef>

namespace toft::terrain {

/// For outbuilding `side` of `ground`, which was worked out from `job`. `width` in user units, 320
/// to 1400. Where the map's grid is not drawable the sheet says that the potentials are not known
/// and shows no map. The same input gives the same scene. Page: docs/ground-pictures.md.
drawing::Scene surface_potential_picture(const site::Job& job, const answer::GroundAnswer& ground,
                                         std::size_t side, const SurfaceMap& map, double width);

/// The same of the map that the answer alone gives (half_ball_map.h).
drawing::Scene surface_potential_picture(const site::Job& job, const answer::GroundAnswer& ground,
                                         std::size_t side, double width);

}  // namespace toft::terrain
