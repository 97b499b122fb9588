#pragma once
// Steps about the supply and the house: what kind of supply it is, whether a separate earth stays
// separate, whether the house's own bonds are fit to be extended, what an added electrode does.
// Page: docs/methods/earthing-choice.md.

#include "walk/step.h"

namespace toft::walk {

Ruling supply_system(const Facts& facts);
Ruling stays_separate(const Facts& facts);
Ruling house_bonds(const Facts& facts);
Ruling added_electrode(const Facts& facts);

std::string supply_found(const Facts& facts);
std::string house_bonds_found(const Facts& facts);
std::string added_electrode_found(const Facts& facts);

std::vector<std::string> supply_changes(const Facts& facts, const Ruling& ruling);
std::vector<std::string> separate_changes(const Facts& facts, const Ruling& ruling);
std::vector<std::string> house_bonds_changes(const Facts& facts, const Ruling& ruling);
std::vector<std::string> added_electrode_changes(const Facts& facts, const Ruling& ruling);

}  // namespace toft::walk
