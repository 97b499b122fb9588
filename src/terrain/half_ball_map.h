#pragma once
// The map of the surface that the answer alone gives: the house's earth as the half ball that would
// have its resistance. Away from the earth, uniform soil's law: share = radius / distance, the
// field of a half ball (exact for it; for other electrodes good from a few of their lengths on).

#include "terrain/surface_map.h"

namespace toft::terrain {

/// A map of house, electrode and the metal between, with the levels that fall on it. The electrode
/// stands where the job has the outbuilding, else to the east; towards the house lies the nearest
/// metal on its earth, which is the half ball's edge. The grid is not drawable when the answer's
/// radius is not above 0 or its distance below 0, or either is not finite.
SurfaceMap half_ball_map(const site::Job& job, const answer::GroundSideAnswer& side);

}  // namespace toft::terrain
