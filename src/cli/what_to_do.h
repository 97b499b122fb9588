#pragma once
// The recommended way in words, for a person who is to build it.

#include "answer/answer.h"

#include <string>

namespace toft::cli {

/// The scheme in a sentence; of several runs a list, a building or those fed alike to an item.
std::string what_to_do(const answer::SchemeAnswer& scheme);

}  // namespace toft::cli
