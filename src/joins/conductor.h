#pragma once
// The conductors of one stretch of a run, and where each is joined. Read off the answer; nothing is
// decided here.

#include "answer/answer.h"

#include <cstddef>
#include <string>
#include <vector>

namespace toft::joins {

enum class Kind { line, neutral, core, armour, separate };

/// How a conductor ends: on a terminal, or cut back and kept from everything.
enum class Ending { joined, isolated };

struct Conductor {
    Kind kind = Kind::line;
    std::string tag = {};          ///< "L", "L1", "N", "PE", "armour"
    answer::CoreAnswer core = {};  ///< its colour and sleeve; empty for the armour
    std::string words = {};        ///< what it is and how it is told from the others
    int line = 0;                  ///< 0 to 2, of a line conductor
    int alike = 1;                 ///< one in each of so many equal cables
    Ending near = Ending::joined;
    Ending far = Ending::joined;

    bool earth() const { return kind != Kind::line && kind != Kind::neutral; }
};

/// Lines, neutral, protective core, armour, conductor beside the cable: those that there are.
/// Precondition: the scheme's run has that stretch.
std::vector<Conductor> conductors_of(const answer::SchemeAnswer& scheme, std::size_t stretch);

}  // namespace toft::joins
