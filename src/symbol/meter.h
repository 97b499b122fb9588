#pragma once
// The two ends of the operator's part: an alternating supply, and the energy meter, a box with a
// strip over the letters Wh (IEC 60617 part 8, recalled). Letters are drawn as lines.

#include "symbol/pen.h"

namespace toft::symbol {

inline constexpr double meter_length = 48;
inline constexpr double source_length = 26;

drawing::Items energy_meter(const Axis& axis, const drawing::Style& pen);

/// A ring with one wave in it; the conductor leaves it downwards.
drawing::Items alternating_source(const Axis& axis, const drawing::Style& pen);

}  // namespace toft::symbol
