#pragma once
// Wires cut into the short bars that a field is solved on.

#include "base/outcome.h"
#include "field/bar.h"
#include "field/soil.h"
#include "field/wire.h"

#include <vector>

namespace toft::field {

struct Cutting {
    Metres longest = metres(0.15);  ///< piece
    int fewest = 1;                 ///< pieces of one wire, before it is cut at boundaries
};

struct Piece {
    Bar bar;
    int wire = 0;
    int electrode = 0;
};

/// Cuts every wire at each boundary of the layers and into pieces between, shorter towards the ends
/// of each part; on average no shorter than four radii where the wire allows that. Refuses wires
/// above the ground, without length or thickness, stout ones (shorter than four radii) and
/// electrodes without a wire.
Outcome<std::vector<Piece>> cut(const std::vector<Wire>& wires, const Strata& soil,
                                const Cutting& cutting);
Outcome<std::vector<Piece>> cut(const std::vector<Wire>& wires, const LayeredSoil& soil,
                                const Cutting& cutting);

/// Metres as bare numbers.
Vector vector_of(const Spot& spot);

}  // namespace toft::field
