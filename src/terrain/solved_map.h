#pragma once
// A solved field's map of the surface as the map of a picture.

#include "base/units.h"
#include "field/surface_map.h"
#include "terrain/surface_map.h"

namespace toft::terrain {

/// Grid and lines at `levels` (shares, 0 to 1) of a map solved with the house's earth at `rise`
/// above far earth. Things and basis are the caller's. The grid is not drawable when `rise` is not
/// above 0.
SurfaceMap solved_map(const field::SurfaceMap& solved, Volts rise,
                      const std::vector<double>& levels);

}  // namespace toft::terrain
