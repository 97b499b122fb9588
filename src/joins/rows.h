#pragma once
// The rows of a stretch: one a conductor, each as high as its words ask.

#include "joins/terminals.h"

#include <string>
#include <vector>

namespace toft::joins {

/// Where the parts of a stretch stand across the sheet.
struct Frame {
    double left = 0, right = 0;              ///< of both enclosures together
    double near_wall = 0, far_wall = 0;      ///< where the cable goes in
    double near_screw = 0, far_screw = 0;    ///< of the terminals
    double far_edge = 8;                     ///< free of words at the far end's outer side
    bool tight = false;                      ///< as on a phone: words stand under their tag
    double words_left = 0, words_right = 0;  ///< for what is said beside the conductors
    double letters = 11;                     ///< of that
    double line() const { return 1.25 * letters; }
};

Frame frame_of(double left, double right);

/// A conductor with its words and the height of its line.
struct Row {
    Conductor conductor;
    std::vector<std::string> near, what, far;  ///< words in lines
    double top = 0, y = 0, foot = 0;
};

inline constexpr double terminal_letters = 10;  ///< of words in the enclosures

/// From `top` down.
std::vector<Row> rows_of(const std::vector<Conductor>& conductors, const Frame& frame,
                         const End& near, const End& far, double top);

/// Left of the words, for the conductor's tag; none where it has a line of its own.
double tag_room(const Frame& frame, const Conductor& conductor);

/// Lines that tag and words take.
std::size_t lines_of(const Frame& frame, const Row& row);

/// The last baseline of a conductor's words over its line.
double words_over(const Conductor& conductor);

}  // namespace toft::joins
