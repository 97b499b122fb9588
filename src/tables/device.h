#pragma once
// What the tables know of fuses, circuit breakers and residual current devices.

#include "base/citation.h"
#include "base/units.h"

#include <optional>
#include <string>
#include <vector>

namespace toft::tables {

/// The device is sure to have operated within `time` at `current` and above.
struct CurvePoint {
    Seconds time;
    Cited<Amperes> current;
};

/// One rating of one overcurrent device.
struct Device {
    std::string standard;  ///< "BS 88-3", "BS EN 60898"
    std::string curve;     ///< "B", "C"; empty for a fuse
    Amperes rating;
    Cited<Amperes> breaking;                                ///< rated breaking capacity
    std::vector<CurvePoint> points;                         ///< by falling time, rising current
    std::optional<Cited<AmpereSquareSeconds>> let_through;  ///< limit at faults up to `breaking`

    bool fuse() const { return curve.empty(); }
};

/// Break times of a kind of residual current device.
struct RcdTimes {
    Cited<Seconds> longest_1;  ///< at the rated residual current
    Cited<Seconds> longest_5;  ///< at five times that
};

/// A residual current device that may stand at the head of a run.
struct RunRcd {
    Amperes sensitivity;
    bool delayed = true;
    Cited<Seconds> longest;  ///< at the rated residual current
};

}  // namespace toft::tables
