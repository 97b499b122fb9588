#pragma once
// A drawing made larger or smaller, with or without its words.

#include "drawing/scene.h"

namespace toft::drawing {

/// Strokes stay at least this wide, user units.
inline constexpr double least_stroke = 0.5;

/// `items` with every coordinate, radius, dash and letter times `factor` (above 0), strokes with
/// them.
Items scaled(const Items& items, double factor);

/// `items` with every coordinate, radius and dash times `factor` (above 0), strokes with them;
/// texts are left out, for words made smaller cannot be read.
Items scaled_without_words(const Items& items, double factor);

}  // namespace toft::drawing
