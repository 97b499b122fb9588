#pragma once
// The potential of the surface over a rectangle, and lines of equal potential on it.
// Page: docs/methods/surface-map.md.

#include "field/field.h"

namespace toft::field {

/// A grid with its first place at `corner`, east then north; depths are not read.
struct MapArea {
    Spot corner;
    Metres east{};
    Metres north{};
    int columns = 80;  ///< places, both ends among them
    int rows = 60;
};

struct SurfaceMap {
    MapArea area;
    std::vector<Volts> potential;  ///< row by row from the corner

    Volts at(int column, int row) const {
        return potential.at(static_cast<std::size_t>(row) * static_cast<std::size_t>(area.columns) +
                            static_cast<std::size_t>(column));
    }
    Spot place(int column, int row) const {
        return {area.corner.east + area.east * column / (area.columns - 1),
                area.corner.north + area.north * row / (area.rows - 1), metres(0)};
    }
};

/// Refuses areas without sides and grids of fewer than 2 or more than 1000 places either way.
Outcome<SurfaceMap> map_surface(const Driven& driven, const MapArea& area);

/// A line of one potential, with the higher ground on its left seen from above, north up.
struct Contour {
    Volts level{};
    std::vector<Spot> places;  ///< a closed line ends where it begins
    bool closed = false;       ///< others end at the edge of the map
};

/// All lines of each level, by marching squares with straight interpolation along the sides; where
/// a square could be crossed two ways, the mean of its corners decides.
std::vector<Contour> contours(const SurfaceMap& map, const std::vector<Volts>& levels);

}  // namespace toft::field
