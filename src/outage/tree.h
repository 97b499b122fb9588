#pragma once
// The devices from the intake out as a tree whose twigs end above the columns of the grid.

#include "outage/grid.h"

namespace toft::outage {

/// What a device is seen to open on: a square on overcurrent, a ring on residual current, a ring in
/// a square on both.
enum class Opens { overcurrent, residual, both };

Items device_sign(Point centre, Opens opens);
inline constexpr double sign_high = 16;

/// The number of a part, and of its column: "1" for the first.
std::string part_sign(std::size_t part);

/// From `top` down to the numbers of the columns. `rcbo`: the device at the head sees residual
/// current too.
Drawn tree(const guard::Darkness& dark, const Columns& columns, const Space& room, bool rcbo);

}  // namespace toft::outage
