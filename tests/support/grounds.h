#pragma once
// Soils and electrodes in few words, and the field of wires in them.

#include "base/pi.h"
#include "field/bar.h"
#include "field/electrode_shape.h"
#include "field/field.h"

#include <gtest/gtest.h>

#include <stdexcept>
#include <utility>

namespace toft::field {

inline Spot spot(double east, double north, double depth) {
    return {metres(east), metres(north), metres(depth)};
}

inline LayeredSoil layers(double upper, double lower, double thickness) {
    return {ohm_metres(upper), ohm_metres(lower), metres(thickness)};
}

/// Resistivity and thickness of each layer from the surface down, over the deepest.
inline Strata stack(const std::vector<std::pair<double, double>>& layers, double deepest) {
    Strata soil{{}, ohm_metres(deepest)};
    for (const auto& [rho, thickness] : layers) {
        soil.layers.push_back({ohm_metres(rho), metres(thickness)});
    }
    return soil;
}

inline Medium medium(const Strata& soil) {
    auto ready = medium_of(soil);
    if (!ready) throw std::runtime_error(ready.error().front().says);
    return *ready;
}

inline Wire rod(double east, double north, double length, double diameter, int electrode = 0) {
    return rod_wire(spot(east, north, 0), metres(length), metres(diameter / 2), electrode);
}

template <class Soil>
Field field_of(const Soil& soil, const std::vector<Wire>& wires, double longest = 0.25,
               int fewest = 12) {
    auto field = solve_field(soil, wires, {metres(longest), fewest});
    if (!field) throw std::runtime_error(field.error().front().says);
    return *field;
}

template <class Soil>
double joined(const Soil& soil, const std::vector<Wire>& wires, double longest = 0.25,
              int fewest = 12) {
    return field_of(soil, wires, longest, fewest).joined().number();
}

/// A source without length.
inline Bar point_bar(double x, double depth) { return {{x, 0, depth}, {0, 0, 1}, 0, 0}; }

/// A rod, a slanting wire down to `foot` and a ring, all apart.
inline std::vector<Wire> three_electrodes(double foot) {
    std::vector<Wire> wires = ring_wires(spot(6, 1, 0.5), metres(2), metres(0.004), 12, 2);
    wires.push_back(rod(0, 0, 2.4, 0.016, 0));
    wires.push_back({spot(1, 3, 0.3), spot(3, 4, foot), metres(0.005), 1});
    return wires;
}

/// Uniform soil of 100 ohm metres.
inline LayeredSoil plain_soil() { return uniform_soil(ohm_metres(100)); }

}  // namespace toft::field
