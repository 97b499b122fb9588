#pragma once
// Electrodes as thin wires in the ground.

#include "base/units.h"

namespace toft::field {

/// A place in the ground: two distances along the surface and the depth below it.
struct Spot {
    Metres east{};
    Metres north{};
    Metres depth{};  ///< 0 at the surface, never negative
};

/// A straight piece of bare metal, the whole length in touch with the soil.
struct Wire {
    Spot from;
    Spot to;
    Metres radius{};    ///< of a strip a quarter of width and thickness together
    int electrode = 0;  ///< wires of one number are joined; numbers count from 0 without gaps
};

}  // namespace toft::field
