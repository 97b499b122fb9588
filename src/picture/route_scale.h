#pragma once
// The run laid out straight: where each leg begins and ends on paper. Legs are drawn to one scale;
// only where the shortest could not be read beside the longest are the longest broken, and said to
// be.

#include "site/job.h"

#include <vector>

namespace toft::picture {

/// Whose leg it is: on or in the house, between the buildings, on or in the outbuilding.
enum class Side { house, between, outbuilding };

struct LegSpan {
    double left = 0;
    double right = 0;
    bool broken = false;  ///< shorter on paper than the scale says (or of no known length)
    Side side = Side::between;
    double width() const { return right - left; }
    double middle() const { return (left + right) / 2; }
};

struct RouteScale {
    double start = 0;
    double end = 0;
    double units_per_metre = 0;  ///< holds for every leg that is not broken; 0 when none is known
    std::vector<LegSpan> legs;
    bool any_broken = false;
    double house_end = 0;  ///< where the run leaves the house
    double far_start = 0;  ///< where it reaches the outbuilding
};

/// Lengths are broken when the longest is more than this many times the shortest …
inline constexpr double longest_over_shortest = 12;
/// … and the shortest would be less than this long on paper.
inline constexpr double shortest_on_paper = 16;

/// Legs from `left` to `right`; a leg known as a range counts as its longest.
RouteScale scale_route(const std::vector<site::Leg>& legs, double left, double right);

}  // namespace toft::picture
