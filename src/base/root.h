#pragma once
// Root finding for a condition that holds up to some point and not beyond.

namespace toft {

/// The largest x in [low, high] for which `holds(x)`, to a relative 1e-9, given that it holds at
/// `low` and that once it fails it stays failed. Returns `high` when it holds there.
template <class Condition>
double last_holding(double low, double high, const Condition& holds) {
    if (holds(high)) return high;
    for (int step = 0; step < 200 && high - low > 1e-9 * high; ++step) {
        const double middle = low + (high - low) / 2;
        (holds(middle) ? low : high) = middle;
    }
    return low;
}

}  // namespace toft
