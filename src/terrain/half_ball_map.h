#pragma once
// The map of the surface that the answer alone gives: the house's earth as the half ball that would
// have its resistance. Away from the earth, uniform soil's law: share = radius / distance, the
// field of a half ball (exact for it; for other electrodes good from a few of their lengths on).

#include "terrain/surface_map.h"

namespace toft::terrain {

/// A map round the house's earth and the outbuilding's electrode, with every level that falls on
/// it. A grid that is not drawable when the answer's radius or distance is not above 0 and finite.
/// The outbuilding stands where the job says, turned to the electrode's distance; else to the east.
SurfaceMap half_ball_map(const site::Job& job, const answer::GroundSideAnswer& side);

}  // namespace toft::terrain
