#pragma once
// Why a client is offered one choice or none, and what would have to be found out.

#include "paper/subject.h"

#include <vector>

namespace toft::paper {

/// What is left of risk where the part's building is earthed so and all is done well, in the words
/// of the earthing decision; said to be not argued where it says nothing.
std::string residual_risk(const answer::Answer& answer, const answer::SchemeAnswer& part);

/// Why there is no second choice: what of the ways looked at fell, and by what.
std::vector<page::Block> only_one(const Subject& subject);

/// What fell, what would change it and what must be found out, where nothing is sound.
std::vector<page::Block> nothing_sound(const Subject& subject);

}  // namespace toft::paper
