#pragma once
// Money by the penny: sums of it are exact.

#include "base/units.h"

#include <optional>

namespace toft::ware {

/// Whole pence, the nearest.
long long pence(Pounds amount);

Pounds of_pence(long long pence);

/// The price of one of `count` that cost so much together; none where it is no whole pence.
std::optional<Pounds> shared_out(Pounds amount, double count);

}  // namespace toft::ware
