#pragma once
// Devices that open on residual current: a ring round all live conductors, the letters I and delta
// in a box, and a dashed link to the blade. Qualifying symbols recalled from IEC 60617, not seen.

#include "symbol/pen.h"

namespace toft::symbol {

inline constexpr double residual_length = 54;

/// How far the box reaches from the conductor.
inline constexpr double residual_reach = 33;

/// A switch that opens on residual current alone (RCD).
drawing::Items residual_switch(const Axis& axis, const drawing::Style& pen);

/// A circuit breaker that opens on residual current too (RCBO).
drawing::Items residual_breaker(const Axis& axis, const drawing::Style& pen);

}  // namespace toft::symbol
