#pragma once
// Where a symbol stands and which way its conductor runs, so that one shape serves a line drawn
// down the sheet and one drawn across it.

#include "drawing/geometry.h"

namespace toft::symbol {

/// `at` is where the conductor enters; lengths count along it, and across it to the right for a
/// conductor drawn downwards (upwards for one drawn to the right). User units.
struct Axis {
    drawing::Point at = {};
    drawing::Point along = {0, 1};  ///< of length 1

    drawing::Point point(double forward, double across = 0) const {
        return at + along * forward - drawing::quarter_turned(along) * across;
    }
    Axis moved(double forward) const { return {point(forward), along}; }
};

}  // namespace toft::symbol
