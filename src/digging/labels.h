#pragma once
// Words of a plan in places of their own: with all lines where there is room, with the first alone
// where there is not, else left out and counted. None ever covers another or what is drawn.

#include "drawing/callout.h"
#include "drawing/placement.h"

#include <vector>

namespace toft::digging {

/// Words and the points that they may point at, the best first; none leaves them out.
struct Label {
    drawing::Callout callout;
    std::vector<drawing::Point> targets;
};

struct Labels {
    drawing::Items items;
    int left_out = 0;
};

/// The first in the list have the best places. Lines to what the words tell of go round `solid`.
Labels labelled(const std::vector<Label>& labels, const drawing::Room& room,
                const std::vector<drawing::Box>& solid = {});

/// Boxes that cover a line, each at most so long.
std::vector<drawing::Box> boxes_along(drawing::Point from, drawing::Point to, double half);

}  // namespace toft::digging
