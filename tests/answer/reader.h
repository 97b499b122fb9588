#pragma once
// A reader with a pocket calculator and nothing but the printed lines of a working.

#include "base/ledger.h"

#include <string>
#include <vector>

namespace toft::answer {

/// One sentence for every computed line that a reader cannot get from the lines above it: a symbol
/// that stands nowhere above, one that stands there with two figures, or another result.
std::vector<std::string> unreadable_lines(const std::vector<Line>& lines);

}  // namespace toft::answer
