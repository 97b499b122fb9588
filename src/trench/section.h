#pragma once
// A trench cut through: how wide and deep it is dug, what lies where in it, sand and tape. Page:
// docs/methods/trench.md.

#include "trench/lying.h"
#include "trench/size.h"

#include <cstddef>
#include <vector>

namespace toft::trench {

/// Where a thing lies: its middle, from the trench's left side and from the surface.
struct Placed {
    std::size_t lying = 0;  ///< place in the list it was made of
    Metres across;          ///< from the left side
    Metres down;            ///< from the surface
};

struct Section {
    Metres cover;  ///< from the surface to the top of the highest thing
    Metres width;
    Metres depth;      ///< of the trench
    Metres below;      ///< sand under the things
    Metres sand;       ///< from the trench's floor to the top of the sand
    Metres tape;       ///< from the surface down
    int tapes = 1;     ///< side by side
    Metres made_good;  ///< thickness of the surface's layer
    Metres bundle;     ///< from the outermost thing to the other
    std::vector<Placed> placed;
};

/// The section with that much over the highest thing. Things stand on one bed: cables in the order
/// given, a conductor against its cable, data apart. The trench is as wide as usual, or as it must
/// be for all to lie apart, to the next 50 mm. Sand ends below the surface's layer; the tape keeps
/// to the lower half of the cover where that is too thin for its usual height.
Section section_of(const tables::Trench& tables, const std::vector<Lying>& lying, Metres cover,
                   Metres layer);

}  // namespace toft::trench
