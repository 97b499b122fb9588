#pragma once
// Ways to build the whole tree that nothing beats on price, headroom and dependability, told apart
// by steps of headroom.

#include "tree/best.h"

namespace toft::tree {

/// Headroom is the least over all runs. Between two steps a dearer way with a little more of it may
/// be left out.
inline constexpr double headroom_step = 0.05;
/// Beyond half of every limit no more is looked for.
inline constexpr double most_headroom = 0.5;

struct Alternatives {
    std::vector<Best> ways;  ///< each proved the cheapest of its headroom and dependability, or not
                             ///< proved; in order of preference
    Best cheapest;           ///< of all; also where nothing was found
};

/// `known`: the cheapest of all, where it has been looked for already.
Alternatives alternatives(const Workplace& at, const Tree& tree, const Asked& asked,
                          const Best* known = nullptr);

}  // namespace toft::tree
