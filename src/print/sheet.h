#pragma once
// The sheet of paper a drawing is printed on: A4, lying or standing.

#include "base/outcome.h"
#include "drawing/geometry.h"

namespace toft::print {

/// Sides of A4, millimetres (ISO 216).
inline constexpr double a4_long = 297;
inline constexpr double a4_short = 210;

/// Kept clear on each side: what most printers cannot reach, millimetres.
inline constexpr double sheet_margin = 5;

struct Sheet {
    double wide = a4_long;       ///< mm
    double high = a4_short;      ///< mm
    double scale = 1;            ///< of the drawing; 1 is its natural size, never more
    drawing::Point corner = {};  ///< upper left corner of the drawing, mm
};

/// The sheet for a drawing of that size in user units: at its natural size where it fits inside the
/// margins, else made smaller until it does; in the middle, lying when that lets it be larger or
/// when it is wider than high. Fault `no-size` when a side is not above nothing or over ten million
/// units.
Outcome<Sheet> sheet_for(double width, double height);

/// A sheet of just the drawing's size. Fault `no-size` when a side is not above nothing or over
/// ten thousand units.
Outcome<Sheet> sheet_of(double width, double height);

}  // namespace toft::print
