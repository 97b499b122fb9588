#pragma once
// Words beside things: text that can be read over lines, and leaders from words to what they name.

#include "drawing/scene.h"

namespace toft::drawing {

/// The same text with a halo of `under` beneath its letters.
Text haloed(Text text, Colour under = palette::paper);

/// A thin line from the edge of `from` to `target`, ended there by a dot; the dot alone when the
/// target is inside `from` or nearer than the dot is wide.
Items leader(const Box& from, Point target, Colour colour = palette::graphite);

}  // namespace toft::drawing
