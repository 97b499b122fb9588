#pragma once
// What the picture of tolerances draws: how far each figure alone moves the headroom, and the
// chance that each rule holds.

#include "drawing/scene.h"
#include "outlook/tolerances.h"
#include "terrain/sheet.h"

namespace toft::swing {

/// Swings that are worth a row, and rules that do not hold at their worst, at most so many.
inline constexpr std::size_t most_rows = 12;
std::vector<tolerance::Swing> shown_swings(const tolerance::Tolerance& found);
std::vector<tolerance::RuleOver> shown_rules(const tolerance::Tolerance& found);

/// A bar of the figure at its low end is hatched, at its high end full.
drawing::Items low_bar(const drawing::Box& box);
drawing::Items high_bar(const drawing::Box& box);

/// Both tables from the space's top down.
terrain::Drawn rows(const tolerance::Tolerance& found, const terrain::Space& room);

}  // namespace toft::swing
