#pragma once
// Which device stands where on the rails of a board. A place is what a device of one pole takes.

#include "parts/ways.h"

#include <cstddef>
#include <vector>

namespace toft::board {

/// What stands at a place.
enum class Holds {
    main_switch,
    residual,  ///< residual current device of the fused way beside it
    way,
    spare,  ///< asked for by the survey
    free    ///< left over so that the lines come in turn
};

struct Module {
    Holds holds = Holds::way;
    std::size_t way = 0;  ///< index of the way, for `way` and `residual`
    int places = 1;
    int line = 0;  ///< of its first place
};

struct Rail {
    std::vector<Module> modules;
    int places() const;
};

/// How a board is to be filled.
struct Filling {
    int phases = 1;        ///< 1 or 3
    int spare = 0;         ///< places
    int rail_places = 12;  ///< that a rail has room for, at least 7
};

/// Main switch first, then the ways. On a board of one line they follow the list. On one of three
/// the places come by L1, L2, L3 in turn, as its bar feeds them: three-pole ways first, then rounds
/// of one way a line; what a line lacks is a spare way, or free. What belongs together is not
/// parted by a rail's end. Every way is there once.
std::vector<Rail> rails_of(const std::vector<parts::Way>& ways, const Filling& filling);

/// Places of all rails.
int places_of(const std::vector<Rail>& rails);

/// Places of the main switch: a pole for each line and one for the neutral.
int switch_places(int phases);

}  // namespace toft::board
