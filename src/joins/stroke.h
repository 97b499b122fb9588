#pragma once
// A conductor as a line: its colour between two edges of ink, a pattern that differs with what it
// is for, its sleeves, and how it ends.

#include "drawing/scene.h"
#include "joins/conductor.h"

namespace toft::joins {

/// Level from `left` to `right` at height `y`; equal cables' conductors one under another, tied at
/// both ends.
drawing::Items stroke(const Conductor& conductor, double left, double right, double y);

/// The sleeve over a core that needs one, level from `left` to `right`; nothing for other cores.
drawing::Items sleeve(const answer::CoreAnswer& core, double left, double right, double y);

/// A protective lead.
drawing::Items lead(const std::vector<drawing::Point>& points);

/// A terminal's screw.
drawing::Items screw(drawing::Point at);

/// A core's end under an insulating cap: `outwards` is 1 where the conductor ends rightwards, -1
/// leftwards.
drawing::Items capped(drawing::Point at, double outwards);

/// Armour cut back at `at` under a sleeve, the gap to the gland at `gland` crossed out.
drawing::Items cut_back(drawing::Point at, double gland);

/// A gland through a wall whose outer face is at `x`; `outwards` as above. Dashed where it is made
/// of what does not conduct.
drawing::Items gland(drawing::Point at, double outwards, Ending ending);

}  // namespace toft::joins
