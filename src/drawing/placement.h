#pragma once
// Where labels go so that none covers another or a thing that must stay seen.

#include "drawing/geometry.h"

#include <vector>

namespace toft::drawing {

/// A label's boxes, the best place first; all of one size.
struct Wish {
    std::vector<Box> preferred = {};
};

struct Place {
    Box box = {};
    bool free = true;  ///< false: no room was left, and the box is the first wish, over something
};

/// The room to place labels in.
struct Room {
    Box frame = {};               ///< labels stay inside
    std::vector<Box> taken = {};  ///< what must not be covered
    double gap = 4;               ///< kept between labels, and between labels and what is taken
};

/// A place for each wish, in order. A label goes to the first of its preferred boxes that is free,
/// else to the free box nearest to any of them: with the labels before it fixed, such a box is
/// found whenever there is one. When an order of placing leaves a label without room, larger labels
/// are tried first, and the way that leaves fewest without room is kept. The same input gives the
/// same places. Work grows with the cube of the number of boxes: meant for up to a hundred.
std::vector<Place> placed(const std::vector<Wish>& wishes, const Room& room);

/// Boxes of that size around `target`, `reach` away from it: right above, left above, right below,
/// left below, right, left, above, below.
std::vector<Box> around(Point target, double width, double height, double reach);

}  // namespace toft::drawing
