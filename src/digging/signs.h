#pragma once
// The signs of a plan: buildings, electrodes, legs by how they lie, surfaces, north.

#include "drawing/scene.h"
#include "site/words.h"

#include <optional>
#include <string>

namespace toft::digging {

/// A square about a building's position, with a cross on it; the house has a second outline.
drawing::Items building_sign(drawing::Point at, double side, bool house);

/// The sign of an earth electrode, hung from `at`; 14 wide and 22 high.
drawing::Items electrode_sign(drawing::Point at);

/// How a leg lies, as far as its line shows it.
enum class Way { buried, duct, there, overhead, fixed };

Way way_of(site::LegMethod method, bool stays);

/// "in the ground", "in a duct in the ground" …
const char* way_words(Way way);

/// A leg from end to end, a stroke across each end.
drawing::Items leg_line(drawing::Point from, drawing::Point to, Way way);

/// What lies over a buried leg: a hatched band along it.
drawing::Items surface_band(drawing::Point from, drawing::Point to, site::Surface surface);

/// An arrow to the top of the sheet and an N, 20 wide and 44 high.
drawing::Items north_arrow(drawing::Point top);

/// Half the width of the band.
inline constexpr double band_half = 7;

}  // namespace toft::digging
