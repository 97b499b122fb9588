#pragma once
// What turns and what gives: a motor (ring with M), an inverter (box parted from direct to
// alternating), a solar generator (cell in a box, struck by light) and a battery (two cells). IEC
// 60617 part 6, recalled, not seen. Letters and waves are drawn as lines.

#include "symbol/pen.h"

namespace toft::symbol {

/// Along the axis, and across it in all.
inline constexpr double machine_size = 16;
inline constexpr double battery_length = 18;

drawing::Items motor(const Axis& axis, const drawing::Style& pen);

/// The alternating side is where the axis enters.
drawing::Items inverter(const Axis& axis, const drawing::Style& pen);

/// Drawn for an axis that runs down the sheet; the light comes from its left.
drawing::Items solar_generator(const Axis& axis, const drawing::Style& pen);

drawing::Items battery(const Axis& axis, const drawing::Style& pen);

}  // namespace toft::symbol
