#pragma once
// A measured length as builders' drawings show it: a line beside the thing, short oblique strokes
// at its ends, the figure over its middle.

#include "drawing/scene.h"

#include <string>

namespace toft::drawing {

struct Dimension {
    Point from = {};
    Point to = {};
    std::string figure = {};  ///< as written, with its unit: "12.5 m"
    /// Of the line from the thing, to the left of from → to; may be negative.
    double offset = 18;
    double size = 11;  ///< of the figure
    Colour colour = palette::graphite;
    Colour under = palette::paper;  ///< halo of the figure
};

/// The dimension's lines and its figure, turned so that it reads from below or from the right. A
/// figure wider than the line stands beyond the line's end. Two equal points draw the figure alone.
Items dimension(const Dimension& wanted);

}  // namespace toft::drawing
