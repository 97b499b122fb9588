#pragma once
// The ratio of a circle's round to its width.

namespace toft {

inline constexpr double pi = 3.14159265358979324;

}  // namespace toft
