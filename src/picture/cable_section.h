#pragma once
// The run's cable cut through: sheath, armour, cores in their colours with their sleeves, and the
// conductor laid beside it.

#include "answer/answer.h"
#include "drawing/scene.h"

namespace toft::picture {

/// Colour of a core by its word ("brown", "blue", "grey", "black"); none for a word that is not
/// known.
std::optional<drawing::Colour> core_colour(const std::string& word);

/// The cable in the left part of `box`, words right of it.
drawing::Items cable_section(const answer::RunAnswer& run, const drawing::Box& box);

}  // namespace toft::picture
