#pragma once
// The outline of each shape as a cairo path.

#include "drawing/scene.h"

#include <cairo/cairo.h>

namespace toft::print {

/// True when both coordinates are numbers within ten million units.
bool sound(drawing::Point p);

/// Adds the shape's outline to the pen's path; false, with nothing or a part of it added, when a
/// coordinate is not sound. An empty polyline, polygon or path adds nothing and is sound.
bool trace(cairo_t* pen, const drawing::Line& line);
bool trace(cairo_t* pen, const drawing::Polyline& line);
bool trace(cairo_t* pen, const drawing::Polygon& area);
bool trace(cairo_t* pen, const drawing::Rect& rect);
bool trace(cairo_t* pen, const drawing::Circle& circle);
bool trace(cairo_t* pen, const drawing::Path& path);

}  // namespace toft::print
