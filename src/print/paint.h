#pragma once
// A scene inked on a cairo canvas exactly as its SVG shows it.

#include "drawing/scene.h"
#include "print/canvas.h"
#include "print/font.h"

#include <string>

namespace toft::print {

/// Inks `scene` in the pen's user units, cut at the scene's edges. Returns the characters that the
/// fonts lack (shown as `replacement`), each once. Faults: `unsound-drawing` when a coordinate is
/// not a number or beyond ten million units, `print` when cairo fails.
Outcome<std::u32string> paint(cairo_t* pen, const drawing::Scene& scene, const Fonts& fonts);

}  // namespace toft::print
