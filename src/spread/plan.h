#pragma once
// In which order offers are worked out: branches grow on what lies behind them, siblings are joined
// two by two. Small parts of the tree come before large ones, wherever they are, so that most of
// the tree is known exactly by the time the large parts need a bound of all the rest.

#include "spread/bound.h"

#include <vector>

namespace toft::spread {

struct Stage {
    std::uint32_t node = none;  ///< twig at whose end it hangs; `none` is the root
    std::uint32_t twig = none;  ///< the branch that grows; `none` in a join
    std::uint32_t left = none;  ///< stage behind the branch (`none` for an end), or first to join
    std::uint32_t right = none;
    std::uint32_t covers = 0;  ///< how many branches
};

/// Stages before those that use them; the last one covers the whole tree.
std::vector<Stage> planned(const Compact& compact);

}  // namespace toft::spread
