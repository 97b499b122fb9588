#pragma once
// One core cut through: insulation in its colour, strands, and the sleeve at its ends.

#include "answer/answer.h"
#include "drawing/scene.h"

#include <optional>
#include <string>

namespace toft::parts {

/// Colour of a core by its word ("brown", "blue", "grey", "black"); none for a word that is not
/// known.
std::optional<drawing::Colour> core_colour(const std::string& word);

/// The core about `centre`; `radius` of its insulation, or of the bare conductor.
drawing::Items core_section(const answer::CoreAnswer& core, drawing::Point centre, double radius);

/// A single insulated protective conductor.
drawing::Items separate_section(drawing::Point centre);

/// "grey, sleeved blue", "bare, sleeved green-and-yellow".
std::string core_words(const answer::CoreAnswer& core);

}  // namespace toft::parts
