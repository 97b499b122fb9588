#pragma once
// Numbers and units as text.

#include "base/quantity.h"

#include <string>

namespace toft {

/// `x` with `digits` significant digits, no trailing zeros, never in exponent form between 1e-6 and
/// 1e9: "0.0622", "230", "1250".
std::string significant(double x, int digits);

/// `x` with `places` decimals.
std::string fixed(double x, int places);

/// The unit of a dimension as the trade writes it: "Ω", "A", "Ω/m", "A²s"; empty for a bare number.
std::string unit_of(const Dimension& dimension);

}  // namespace toft
