#pragma once
// What every kind of reading must keep.

#include <cmath>
#include <cstddef>

namespace toft::soil {

/// Readings of one measurement, at most.
inline constexpr std::size_t most_readings = 200;

inline bool positive(double x) { return x > 0 && std::isfinite(x); }

}  // namespace toft::soil
