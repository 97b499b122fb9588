#pragma once
// A scheme while figures vary, as JSON.

#include "outlook/tolerances.h"

#include <string>

namespace toft::outlook {

/// The document of `toft tolerance`, format toft-tolerance/1.
std::string write_tolerance(const ToleranceAnswer& answer);

}  // namespace toft::outlook
