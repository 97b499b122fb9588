#pragma once
// What a job comes to under one reading of its open facts: the first of the sound schemes, or that
// there is none; of a job of several runs the cheapest way to build them all. Levers and unknowns
// compare such solutions and look no further.

#include "study/scheme.h"

#include <string>
#include <vector>

namespace toft::solve {

struct Solution {
    std::vector<study::RunScheme> schemes;  ///< one for each run, in the order of the tree; empty:
                                            ///< nothing is sound
    std::string key;                        ///< of them; empty for none
    double total = 0;                       ///< pounds with tax
    double headroom = 0;                    ///< the least of all runs
    double dependability = 0;               ///< grade of the weakest run
    bool proved = true;  ///< nothing sound comes before it; where there is none, nothing is sound

    bool sound() const { return !schemes.empty(); }
};

/// Both nothing, or both the same scheme.
inline bool same_choice(const Solution& a, const Solution& b) { return a.key == b.key; }

}  // namespace toft::solve
