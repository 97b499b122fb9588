#pragma once
// The one comparison with a limit. Native and WebAssembly builds differ in last bits, so a value
// that reaches its limit to one part in a thousand million counts as at the limit, and at the limit
// is met.

namespace toft {

/// Relative width of a tie.
inline constexpr double limit_tolerance = 1e-9;

/// True when `value` does not exceed `limit` (both in the same unit, limit >= 0).
constexpr bool within(double value, double limit) {
    return value <= limit + limit_tolerance * (limit < 0 ? -limit : limit);
}

}  // namespace toft
