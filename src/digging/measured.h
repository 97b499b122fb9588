#pragma once
// A drawing that is true to a stated scale throughout.

#include "drawing/scene.h"

namespace toft::digging {

struct Measured {
    drawing::Scene scene;
    double one_to = 1;         ///< 200 for 1:200, at the scene's natural size
    drawing::Point zero = {};  ///< where 0, 0 of the thing drawn stands, user units
};

/// User units that a metre takes at 1 to so much.
constexpr double units_a_metre(double one_to) { return drawing::units_of_mm(1000 / one_to); }

/// Natural width of a sheet: what a page of A4 leaves for words.
inline constexpr double paper_wide = drawing::units_of_mm(176);

/// How much of a sheet is wanted.
struct Wanted {
    double width = 0;   ///< of the scene, user units; 0 for paper_wide
    bool alone = true;  ///< with title, lists and cautions; else the drawing for a paper with them
};

/// The width taken into 320 to 1400 user units.
double width_of(const Wanted& wanted);

}  // namespace toft::digging
