#pragma once
// Steps about an electrode: whether the two earths can be kept out of touch, whether the ground
// gives an electrode low enough to last, whether the house's own does (TT).
// Page: docs/methods/earthing-choice.md.

#include "walk/step.h"

namespace toft::walk {

Ruling within_reach(const Facts& facts);
Ruling ground(const Facts& facts);
Ruling house_electrode(const Facts& facts);

/// Largest electrode that keeps metal under the touch voltage when the building's RCDs act.
Ohms largest_electrode(const Facts& facts);

std::string within_reach_found(const Facts& facts);
std::string ground_found(const Facts& facts);
std::string house_electrode_found(const Facts& facts);

std::vector<std::string> within_reach_changes(const Facts& facts, const Ruling& ruling);
std::vector<std::string> ground_changes(const Facts& facts, const Ruling& ruling);
std::vector<std::string> house_electrode_changes(const Facts& facts, const Ruling& ruling);

}  // namespace toft::walk
