#pragma once
// A scheme while figures vary, as JSON.

#include "answer/tolerances.h"

#include <string>

namespace toft::codec {

/// The document of `toft tolerance`, format toft-tolerance/1.
std::string write_tolerance(const answer::ToleranceAnswer& answer);

}  // namespace toft::codec
