#pragma once
// The house's end of the run beside the board: the device that feeds it, in its box, and the cable
// that leaves.

#include "drawing/scene.h"
#include "picture/stage.h"

#include <string>
#include <vector>

namespace toft::board {

struct HouseEnd {
    drawing::Items items;
    double foot = 0;
    drawing::Point exit;  ///< where the cable leaves the box, downwards
};

/// What feeds the run, line by line; the first is the head.
std::vector<std::string> house_end_words(const picture::Stage& stage);

/// The run's cable, line by line.
std::vector<std::string> incoming_words(const answer::RunAnswer& run);

/// The box at the upper left of `left` to `right`; its words beside it, or where `below` is set
/// under it. Precondition: the stage has a scheme.
HouseEnd house_end(const picture::Stage& stage, double left, double right, double top, bool below);

/// The run's cable as it looks, through those points.
drawing::Items cable_line(const answer::CableAnswer& cable,
                          const std::vector<drawing::Point>& points);

}  // namespace toft::board
