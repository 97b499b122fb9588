#pragma once
// A trench cut through, to scale: ground, layer of the surface, backfill, tape, sand, what lies in
// it, its sizes in millimetres.

#include "drawing/scene.h"
#include "trench/works.h"

#include <vector>

namespace toft::digging {

/// A part that the words beside the drawing tell of.
struct Pointed {
    drawing::Point at;
    std::string head;
    std::string says;
};

struct Cut {
    drawing::Items items;
    drawing::Box box;            ///< of all of it, sizes included
    std::vector<Pointed> parts;  ///< from the top down
};

/// `zero` is the trench's left upper corner, at the surface.
Cut cut(const tables::Trench& tables, const trench::Trench& trench, drawing::Point zero,
        double one_to);

/// What the drawing needs beside and above the trench itself, user units.
inline constexpr double cut_left = 112;
inline constexpr double cut_right = 20;
inline constexpr double cut_above = 16;
inline constexpr double cut_below = 32;

/// Undisturbed ground drawn on either side and below, metres.
inline constexpr double ground_shown = 0.05;

}  // namespace toft::digging
