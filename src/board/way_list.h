#pragma once
// The list that belongs to the board: under each way's number its name, device, cable, line, and
// what it comes to.

#include "answer/answer.h"
#include "drawing/scene.h"
#include "parts/ways.h"

#include <string>
#include <vector>

namespace toft::board {

struct ListOf {
    const std::vector<parts::Way>& ways;
    int phases = 1;                           ///< of the board
    const std::vector<std::string>& assumed;  ///< of the answer: says why a circuit is not designed
};

/// What stands under a way's name.
std::vector<std::string> way_lines(const parts::Way& way, const ListOf& of);

struct WayList {
    drawing::Items items;
    double foot = 0;
};

/// All ways from `top` down, in so many columns between `left` and `right`; down the first column,
/// then down the next.
WayList way_list(const ListOf& of, drawing::Box box, int columns);

}  // namespace toft::board
