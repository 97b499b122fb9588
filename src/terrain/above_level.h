#pragma once
// The part of the surface at or above a level, as outlines that can be filled: lines of equal
// potential, closed along the edge of the map where they end there.

#include "terrain/surface_map.h"

namespace toft::terrain {

/// Outlines of the surface whose potential is no less than that of `contour`: anticlockwise as seen
/// on a map with the north up, holes clockwise. Open lines must end on the grid's edge; those that
/// do not are left out. Precondition: drawable(grid).
std::vector<std::vector<GroundPoint>> above_level(const SurfaceGrid& grid,
                                                  const ContourLine& contour);

}  // namespace toft::terrain
