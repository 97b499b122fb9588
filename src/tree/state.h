#pragma once
// What the runs before leave at a board, as figures that add up along the way: the language in
// which the tree is put to the solver.

#include "study/incoming.h"

#include <array>

namespace toft::tree {

/// Each grows as a run is added. The squares stand for the smallest loops, whose squares add up;
/// they are taken negative, so that more is worse here too.
enum class Axis : unsigned char {
    drop,
    ze_working,
    ze_hot,
    zn_working,
    zn_hot,
    ze_least,
    zn_least
};
inline constexpr std::size_t axes = 7;

/// Bounds fault currents from above.
constexpr bool of_levels(Axis axis) { return axis == Axis::ze_least || axis == Axis::zn_least; }

using Figures = std::array<double, axes>;

Figures figures_of(const study::Incoming& incoming);

/// `to` with only the figures of that axis (and what moves with it) as far from `from` as `share`
/// says: 0 as in `from`, 1 as in `to`; all others as in `from`.
study::Incoming moved(const study::Incoming& from, const study::Incoming& to, Axis axis,
                      double share);

}  // namespace toft::tree
