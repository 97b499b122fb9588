#pragma once
// The board with its cover off: enclosure, terminal bars, devices on their rails, what joins them.

#include "board/places.h"
#include "drawing/scene.h"

#include <string>

namespace toft::board {

struct FrontOf {
    const std::vector<parts::Way>& ways;
    int phases = 1;
    int spare = 0;
    int earth_screws = 2;       ///< conductors joined to the earth terminal
    bool earth_carried = true;  ///< the run brings an earth that is joined to it
    bool own_electrode = false;
};

struct Front {
    drawing::Items items;
    double foot = 0;
    double right = 0;
    drawing::Point entry;  ///< where the incoming cable meets the enclosure's left wall
    int places = 0;        ///< that the rails are filled with
};

/// Room that a sheet gives the enclosure at least, user units.
inline constexpr double least_front = 286;

/// The board from `left` to at most `right` (`least_front` apart at least), as wide as its longest
/// rail, `top` down.
Front front(const FrontOf& of, double left, double right, double top);

}  // namespace toft::board
