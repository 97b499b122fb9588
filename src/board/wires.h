#pragma once
// Conductors inside the board: in the colours of IEC 60445 between edges of ink, and always named
// or numbered where they end, so that nobody has to tell them by colour.

#include "drawing/scene.h"

#include <vector>

namespace toft::board {

/// Brown, black, grey for L1 to L3.
drawing::Colour line_colour(int line);

/// A line conductor, a neutral, a protective conductor through those points.
drawing::Items line_wire(const std::vector<drawing::Point>& points, int line);
drawing::Items neutral_wire(const std::vector<drawing::Point>& points);
drawing::Items earth_wire(const std::vector<drawing::Point>& points);

struct Strip {
    drawing::Items items;
    double foot = 0;
};

/// A bar with that many screws from `left` to at most `right`, in as many rows as they need.
Strip terminal_strip(int screws, double left, double right, double top);

/// A number in a ring: the same at a device and in the list. 0 stands for all circuits together.
drawing::Items numbered_ring(int number, drawing::Point centre);
inline constexpr double ring_radius = 9;

}  // namespace toft::board
