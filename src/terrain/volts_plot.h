#pragma once
// Volts on the outbuilding's metal over the load that is on, a band for each way to earth it.

#include "drawing/scene.h"
#include "groundwork/ground.h"
#include "terrain/sheet.h"

#include <string>
#include <vector>

namespace toft::terrain {

/// The letter of way `number` and its line, for the list of ways; `sign_wide` wide.
drawing::Items way_sign(std::size_t number);

/// "a", "b" …
std::string way_letter(std::size_t number);

/// Points with a load and volts that can be drawn, the smallest load first.
std::vector<answer::LostNeutralPointAnswer> drawable_points(
    const answer::LostNeutralWayAnswer& way);

/// True when some way has a drawable point.
bool has_plot(const answer::LostNeutralAnswer& fault);

/// Bands with their letters, the marks, the load of today. Nothing when there is no drawable point.
Drawn volts_plot(const answer::LostNeutralAnswer& fault, const Space& room);

}  // namespace toft::terrain
