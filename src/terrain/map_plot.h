#pragma once
// A map of the surface: tones and lines of equal potential with their levels on them, buildings,
// electrodes, scale bar, north.

#include "drawing/scene.h"
#include "groundwork/ground.h"
#include "site/job.h"
#include "terrain/sheet.h"
#include "terrain/surface_map.h"

namespace toft::terrain {

struct MapOf {
    const site::Job& job;
    const answer::LostNeutralAnswer& fault;
    const SurfaceMap& map;
};

/// The line of a level: heavier the higher, those of volts dashed.
drawing::Style contour_style(double level, bool volts);

/// "20 %", or of a mark "50 V".
std::string level_words(const MapOf& of, double level);

/// Precondition: drawable(of.map.grid).
Drawn map_plot(const MapOf& of, const Space& room);

}  // namespace toft::terrain
