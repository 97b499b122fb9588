#pragma once
// The map of the surface that the answer alone gives: the house's earth as the half ball that would
// have its resistance. Away from the earth, uniform soil's law: share = radius / distance, the
// field of a half ball (exact for it; for other electrodes good from a few of their lengths on).

#include "terrain/surface_map.h"

namespace toft::terrain {

/// A map round the house's earth and the outbuilding's electrode, with every level that falls on
/// it. A grid that is not drawable when the answer's radius is not above 0 or its distance below 0,
/// or either not finite. The electrode stands in the outbuilding's direction where the job says its
/// place, else to the east; the half ball's edge is the metal that its distance is taken from.
SurfaceMap half_ball_map(const site::Job& job, const answer::GroundSideAnswer& side);

}  // namespace toft::terrain
