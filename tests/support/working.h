#pragma once
// Checks of written working: what a reader with a pocket calculator would find.

#include "base/ledger.h"

#include <string>
#include <vector>

namespace toft::support {

/// How closely a formula must give its result: literals in formulas are printed with nine digits.
inline constexpr double working_tolerance = 1e-7;

/// True when `a` and `b` agree to that tolerance; infinities agree with themselves.
bool agree(double a, double b, double tolerance = working_tolerance);

/// One sentence for every line whose formula does not give its result with the figures of its
/// inputs, whose formula does not read as one, or names a symbol that its inputs do not settle.
std::vector<std::string> wrong_lines(const std::vector<Line>& lines);

}  // namespace toft::support
