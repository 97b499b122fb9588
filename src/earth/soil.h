#pragma once
// Uniform soil, or two layers with a horizontal boundary.

#include "base/units.h"

namespace toft::earth {

/// Two layers; uniform soil is two equal ones of any thickness.
struct LayeredSoil {
    OhmMetres upper{};
    OhmMetres lower{};
    Metres thickness{};  ///< of the upper layer; the lower one has no end
};

inline LayeredSoil uniform_soil(OhmMetres rho) { return {rho, rho, metres(1)}; }

/// Share of a charge that the boundary mirrors, seen from above: -1 (metal below) to 1 (void).
inline double reflection(const LayeredSoil& soil) {
    return (soil.lower - soil.upper) / (soil.lower + soil.upper);
}

}  // namespace toft::earth
