#pragma once
// Hatching as lines of its own, cut at the outline: what a plotter draws, and what every renderer
// and printer shows alike.

#include "drawing/scene.h"

#include <vector>

namespace toft::drawing {

/// Parallel lines over an area. They keep to one raster from the origin, so hatchings of
/// neighbouring areas meet.
struct Hatch {
    double angle = -45;  ///< of the lines against the level, clockwise on the page, degrees
    double spacing = 6;  ///< between lines, user units; not above 0 draws none
    Style style = stroked(palette::pencil, weight::hair);
};

/// The hatching of a polygon (even-odd where its outline crosses itself).
Items hatched(const std::vector<Point>& outline, const Hatch& hatch);

Items hatched(const Box& box, const Hatch& hatch);

/// Masonry cut through: close lines falling to the left.
inline const Hatch masonry = {.angle = -45, .spacing = 5};

/// Concrete or screed cut through: wider lines falling to the right.
inline const Hatch concrete = {.angle = 30, .spacing = 9};

/// Strokes below a ground line, in threes that shorten, leaning back from its direction; below is
/// the right hand of the line's direction (a line from left to right has them under it).
Items ground_strokes(const std::vector<Point>& line, const Style& style = stroked(palette::earth));

}  // namespace toft::drawing
