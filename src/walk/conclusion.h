#pragma once
// What is left of each way of earthing when all is done well, and the walk in a few sentences.
// Page: docs/methods/earthing-choice.md.

#include "walk/walk.h"

namespace toft::walk {

/// The risk that stays with a choice, in plain words.
std::string residual_risk(Choice choice, site::Earthing system);

/// Where the ways stand, what tells them apart and what is not known.
std::string conclusion_of(const Walk& walk);

}  // namespace toft::walk
