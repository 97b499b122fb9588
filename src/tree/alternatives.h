#pragma once
// Ways to build the whole tree that nothing beats on price, headroom and dependability, told apart
// by steps of headroom; beside them the cheapest with buildings earthed the other way, and the one
// that costs least with the energy it loses over the years.

#include "tree/best.h"

namespace toft::tree {

/// Headroom is the least over all runs. Between two steps a dearer way with a little more of it may
/// be left out.
inline constexpr double headroom_step = 0.01;
/// Beyond half of every limit no more is looked for.
inline constexpr double most_headroom = 0.5;
/// Ways of more runs are not looked for with each building in turn earthed the other way, only with
/// all on one side.
inline constexpr std::size_t most_turned = 6;

/// What a way is the cheapest with.
enum class Merit {
    nothing,        ///< of all
    dependability,  ///< of its grade or above
    headroom,       ///< of that much or more
    earth,          ///< with buildings earthed as they are in it
    years           ///< with the energy lost over the years counted
};

struct Way : Best {
    Merit merit = Merit::nothing;
};

struct Alternatives {
    std::vector<Way> ways;  ///< each proved, or not; in order of preference
    Best cheapest;          ///< of all; also where nothing was found
    /// Place among `ways` of the one that costs least with the energy lost over the years.
    std::optional<std::size_t> least_over_years;
    bool stopped = false;  ///< by who asked: there may be more
};

/// Places of the ways to show where there is room for `most`, in order: the cheapest, the cheapest
/// over the years, those of other grades and most headroom, of other earths, then steps of headroom
/// as far apart as may be.
std::vector<std::size_t> shown(const Alternatives& all, std::size_t most);

/// `known`: the cheapest of all, where it has been looked for already.
Alternatives alternatives(const Workplace& at, const Tree& tree, const Asked& asked,
                          const Best* known = nullptr);

}  // namespace toft::tree
