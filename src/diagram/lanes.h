#pragma once
// The cables of a stretch beside one another on the live line, one or a pair, their armour and
// what it is joined to.

#include "diagram/ladder.h"

#include "answer/answer.h"

#include <vector>

namespace toft::diagram {

/// Distances of the cables from the live line.
std::vector<double> lanes_of(const answer::CableAnswer& cable);

/// The cables from `top` to `foot`, with armour over the same height where they have any.
void draw_lanes(const answer::CableAnswer& cable, double top, double foot, Ladder& ladder);

/// Where the one line spreads into a pair, or a pair becomes one line; nothing for one cable.
void spread(const answer::CableAnswer& cable, double y, Ladder& ladder);

/// A gland on each cable with its base at `base`, the cable leaving downwards (`way` 1) or upwards
/// (-1).
void draw_glands(const answer::CableAnswer& cable, double base, double way, Ladder& ladder);

/// From the armour's edges to the protective conductor's column, or the mark of armour that is
/// joined to nothing.
void tie_armour(const answer::CableAnswer& cable, bool earthed, double y, Ladder& ladder);

/// From the live line to the protective conductor's column: the protective core leaves the cable.
void tie_core(double y, Ladder& ladder);

}  // namespace toft::diagram
