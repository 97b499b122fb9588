#pragma once
// Areas and volumes of ground works, built from lengths.

#include "base/units.h"

namespace toft::trench {

using SquareMetres = decltype(metres(1) * metres(1));
using CubicMetres = decltype(metres(1) * metres(1) * metres(1));

constexpr SquareMetres square_metres(double v) { return SquareMetres(v); }
constexpr CubicMetres cubic_metres(double v) { return CubicMetres(v); }

}  // namespace toft::trench
