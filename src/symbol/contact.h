#pragma once
// Switching devices after IEC 60617: an open blade whose fixed contact says what it can do. A bar
// isolates, a bar with a ring switches load and isolates, a cross breaks fault current. The
// standard's drawings are recalled (part 7, S00287, S00288, S00290), not seen.

#include "symbol/pen.h"

namespace toft::symbol {

inline constexpr double contact_length = 40;

/// Main switch or isolator that may be opened on load (switch-disconnector).
drawing::Items switch_disconnector(const Axis& axis, const drawing::Style& pen);

drawing::Items circuit_breaker(const Axis& axis, const drawing::Style& pen);

/// Middle of the blade, where what trips it takes hold.
drawing::Point blade_middle(const Axis& axis);

}  // namespace toft::symbol
