#pragma once
// Steps about what the building is and who stands in it: caravan or boat, animals, wet ground, pool
// or tub, charging of vehicles. What nobody said counts as if it were so.
// Page: docs/methods/earthing-choice.md.

#include "walk/step.h"

namespace toft::walk {

Ruling movable(const Facts& facts);
Ruling animals(const Facts& facts);
Ruling wet_ground(const Facts& facts);
Ruling pool_or_tub(const Facts& facts);
Ruling charging(const Facts& facts);

std::string movable_found(const Facts& facts);
std::string animals_found(const Facts& facts);
std::string wet_ground_found(const Facts& facts);
std::string pool_found(const Facts& facts);
std::string charging_found(const Facts& facts);

std::vector<std::string> movable_changes(const Facts& facts, const Ruling& ruling);
std::vector<std::string> animals_changes(const Facts& facts, const Ruling& ruling);
std::vector<std::string> wet_ground_changes(const Facts& facts, const Ruling& ruling);
std::vector<std::string> pool_changes(const Facts& facts, const Ruling& ruling);
std::vector<std::string> charging_changes(const Facts& facts, const Ruling& ruling);

}  // namespace toft::walk
