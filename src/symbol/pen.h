#pragma once
// The language of `drawing` for symbols, and the pen they are drawn with: thin for what is there
// already, firm for what is new.

#include "drawing/scene.h"
#include "symbol/axis.h"

namespace toft::symbol {

using namespace drawing;
using drawing::Line;
using drawing::Point;

inline Style pen_existing() { return stroked(palette::ink, 1.1); }
inline Style pen_new() { return stroked(palette::ink, 2); }

/// The pen's outline over a fill that hides what lies beneath.
inline Style over_paper(Style pen) {
    pen.fill = palette::paper;
    return pen;
}

/// The pen as a fill: dots and arrow heads.
inline Style solid(const Style& pen) { return filled(*pen.stroke); }

}  // namespace toft::symbol
