#pragma once
// Touch and step voltage along a straight line over the surface, from a solved field. Prospective
// values: volts between places of the ground, without the body, shoes or flooring in between.

#include "field/field.h"

namespace toft::field {

inline constexpr double pace_m = 1;  ///< of a step, and the reach of an arm

struct Walk {
    Spot from;  ///< depths are not read: the walk is on the surface
    Spot to;
    int places = 21;    ///< evenly along the line, both ends among them; at least 2
    int electrode = 0;  ///< that the hand touches
};

struct Footing {
    Metres distance{};  ///< from the start of the walk
    Volts ground{};     ///< potential of the surface
    Volts touch{};      ///< hand on the electrode, feet here; negative where the ground is higher
    Volts step{};       ///< between here and one pace on along the line, without sign
};

/// One entry for each place of the walk, in order.
std::vector<Footing> walk_over(const Field& field, const Currents& currents, const Walk& walk);

}  // namespace toft::field
