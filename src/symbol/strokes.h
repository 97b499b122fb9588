#pragma once
// Which conductors one line stands for: an oblique stroke each, plain for a line conductor, with a
// dot for the neutral, with a bar for the protective conductor, with both for one that is both
// (PEN). IEC 60617 S00446 to S00448, recalled.

#include "symbol/pen.h"

#include <vector>

namespace toft::symbol {

enum class Core { line, neutral, protective, pen };

/// Strokes around the axis's start with their number at the side (a figure, set as a label).
drawing::Items strokes(const Axis& axis, const std::vector<Core>& cores, const drawing::Style& pen);

/// How much of the conductor so many strokes take.
double strokes_length(std::size_t count);

/// Half the width that strokes and their number take across the conductor.
inline constexpr double strokes_reach = 24;

}  // namespace toft::symbol
