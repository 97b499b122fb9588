#pragma once
// Broad lines between two thin edges of ink, which keep any colour to be seen on paper, at night
// and in black and white: of one colour, or of two in bands as a conductor of two colours looks.

#include "drawing/scene.h"

namespace toft::drawing {

/// The line in `colour`, `width` wide without its edges.
inline Items cased(const std::vector<Point>& points, Colour colour, double width) {
    constexpr double edge = 0.6;
    return {Polyline{points, stroked(palette::ink, width + 2 * edge)},
            Polyline{points, stroked(colour, width)}};
}

/// The line in `ground` with bands of `band` over it, as long as the gaps between them.
inline Items banded(const std::vector<Point>& points, Colour ground, Colour band, double width) {
    const double length = 2.5 * width;
    Items items = cased(points, ground, width);
    items.push_back(Polyline{points, dashed(band, width, {length, length})});
    return items;
}

}  // namespace toft::drawing
