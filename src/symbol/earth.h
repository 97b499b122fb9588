#pragma once
// Earth after IEC 60617: three bars that get shorter (S00200), the same in a ring for protective
// earth (S00202), a rod that ends in it for an electrode, and a pipe's end for metal that is
// bonded. The rod and the pipe are drawn by trade practice.

#include "symbol/pen.h"

namespace toft::symbol {

/// Height of the sign below its point.
inline constexpr double earth_height = 12;

drawing::Items earth(drawing::Point at, const drawing::Style& pen);

/// The ring's centre is at `centre`; its radius is `protective_earth_radius`.
inline constexpr double protective_earth_radius = 10;
drawing::Items protective_earth(drawing::Point centre, const drawing::Style& pen);

/// A rod from `top` down `length`, the sign of earth at its foot within that length.
drawing::Items electrode(drawing::Point top, double length, const drawing::Style& pen);

/// A pipe that stands across the bond's end at `at`, with its clamp.
drawing::Items bonded_metal(drawing::Point at, const drawing::Style& pen);

}  // namespace toft::symbol
