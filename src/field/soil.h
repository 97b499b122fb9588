#pragma once
// Uniform soil, two layers, or any number of them, with horizontal boundaries.

#include "base/outcome.h"
#include "base/units.h"

#include <vector>

namespace toft::field {

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

/// A layer with an end.
struct Stratum {
    OhmMetres resistivity{};
    Metres thickness{};
};

/// Layers from the surface down, over ground without end.
struct Strata {
    std::vector<Stratum> layers;
    OhmMetres deepest{};
};

inline Strata strata(const LayeredSoil& soil) {
    return {{{soil.upper, soil.thickness}}, soil.lower};
}

/// The same ground with neighbours of one resistivity as one layer.
Strata merged(const Strata& soil);

/// Depths of the boundaries in metres, from the surface down.
std::vector<double> boundaries(const Strata& soil);

/// What no field can be solved in: layers without resistivity or thickness, resistivities more than
/// 10 000 times apart, more than 8 layers above the deepest, layers more than 10 000 times as thick
/// as others.
Faults faults_of(const Strata& soil);

}  // namespace toft::field
