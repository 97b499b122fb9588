#pragma once
// How far soils may lie from the best one while the readings still allow them.

#include "soil/least_squares.h"

namespace toft::soil {

/// The soil farthest out in one figure whose sum of squares stays within `limit`, all other figures
/// moved to their best.
struct Outermost {
    LogSoil soil;    ///< within the limit
    double end = 0;  ///< of that figure: at or just beyond the limit, to 1 %
    /// The end of the box was reached within the limit, or other figures stand at an end of the box
    /// and a wider box would let this one go farther.
    bool open = false;
};

struct Outwards {
    std::size_t figure = 0;
    bool up = true;
    double limit = 0;  ///< sum of squares; that of the start is not above it
};

/// Walks outwards from `start`.
Outermost outermost(const Taken& taken, const Box& box, const LogSoil& start, const Outwards& way);

}  // namespace toft::soil
