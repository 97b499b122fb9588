#pragma once
// What a job comes to under one reading of its open facts: the first of the sound schemes, or that
// there is none. Levers and unknowns compare such solutions and look no further.

#include "search/search.h"

#include <optional>
#include <string>

namespace toft::solve {

struct Solution {
    std::optional<search::Sound> best;  ///< none: nothing is sound
    std::string key;                    ///< of the best; empty for none

    bool sound() const { return best.has_value(); }
    double total() const { return best ? best->total : 0; }  ///< pounds with tax
};

/// Both nothing, or both the same scheme.
inline bool same_choice(const Solution& a, const Solution& b) { return a.key == b.key; }

}  // namespace toft::solve
