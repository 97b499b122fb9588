#pragma once
// Steps about metal: each part that enters, whether any of it brings in a potential and what test
// would clear it, a metal building, and the bonds that follow.
// Pages: docs/methods/earthing-choice.md, docs/methods/extraneous-part.md.

#include "walk/step.h"

namespace toft::walk {

/// Key of the basis of every single part.
inline constexpr const char* part_key = "metalwork";

/// One part of the building's list, in its order.
Ruling metal_part(const Facts& facts, std::size_t part);
std::string metal_part_found(const Facts& facts, std::size_t part);
std::vector<std::string> metal_part_changes(const Facts& facts, std::size_t part);

/// Resistance from a part to the earthing terminal above which no more than `current` flows from
/// `u0` through the part and a body: U0 / I - R.body.
Ohms extraneous_limit(Volts u0, Amperes current, Ohms body);

Ruling brings_in(const Facts& facts);
Ruling metal_building(const Facts& facts);
Ruling bonds(const Facts& facts);

std::string brings_in_found(const Facts& facts);
std::string metal_building_found(const Facts& facts);
std::string bonds_found(const Facts& facts);

std::vector<std::string> brings_in_changes(const Facts& facts, const Ruling& ruling);
std::vector<std::string> metal_building_changes(const Facts& facts, const Ruling& ruling);
std::vector<std::string> bonds_changes(const Facts& facts, const Ruling& ruling);

}  // namespace toft::walk
