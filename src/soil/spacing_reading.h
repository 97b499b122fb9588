#pragma once
// Readings of soil with four pins in a line: current through the outer two, voltage between the
// inner two, their quotient read off as ohms.
//
// In uniform soil the apparent resistivity is the resistivity, exactly, with pins seen as points
// at their depth: rho_a = G R, G = 4 pi/(the sum of 1/distance, images included). For pins without
// depth that is 2 pi a R (Wenner; MIL-HDBK-419A, vol. 2, 1.1) and pi R (L^2 - m^2)/(2 m)
// (Schlumberger); with depth it is the formula of IEEE 81 (memory).
// Page: docs/methods/four-pin-reading.md.

#include "base/outcome.h"
#include "base/units.h"

#include <vector>

namespace toft::soil {

enum class PinArray {
    wenner,       ///< four pins at even distances
    schlumberger  ///< two pins close together midway between two far ones
};

/// How the pins stand.
struct Spread {
    PinArray array = PinArray::wenner;
    Metres spacing{};    ///< Wenner: from pin to pin. Schlumberger: half from current pin to other
    Metres potential{};  ///< Schlumberger: between the inner pins. Wenner: not read
    Metres depth{};      ///< of the pins in the ground; 0 where it was not noted
};

struct SpacingReading {
    Spread spread;
    Ohms resistance{};
};

/// From a current pin to the inner pin next to it, and to the other inner pin.
struct PinDistances {
    Metres near{};
    Metres far{};
};
PinDistances pin_distances(const Spread& spread);

/// What a reading in ohms is multiplied by. The spread has no faults.
Metres geometric_factor(const Spread& spread);

OhmMetres apparent_resistivity(const SpacingReading& reading);

/// All that is wrong, with places like `/2/spacing_m`: `out-of-range` for lengths and resistances
/// that are zero, negative or no numbers, spacings below 5 cm or above 2 km, inner pins not between
/// the outer ones or closer than a five-hundredth of the spacing, pins deeper than they stand
/// apart.
Faults faults_of(const std::vector<Spread>& spreads);
Faults faults_of(const std::vector<SpacingReading>& readings);

}  // namespace toft::soil
