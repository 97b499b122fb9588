#pragma once
// The ground as the survey knows it: its kind, its resistivity, layers, and what meters read there.

#include "base/temperature.h"
#include "base/units.h"
#include "site/fact.h"
#include "site/words.h"

#include <optional>
#include <string>
#include <vector>

namespace toft::site {

/// A layer of soil that the survey names, from the surface down; the last has no end.
struct SoilLayer {
    Fact<OhmMetres> resistivity;
    std::optional<Metres> thickness;

    friend bool operator==(const SoilLayer&, const SoilLayer&) = default;
};

/// A reading with four pins in a line.
struct PinReading {
    PinArray array = PinArray::wenner;
    Metres spacing{};    ///< Wenner: between neighbours; Schlumberger: between the current pins
    Metres potential{};  ///< Schlumberger: between the potential pins
    Metres pin_depth{};  ///< how deep they were driven; 0 when not stated
    Ohms resistance{};

    friend bool operator==(const PinReading&, const PinReading&) = default;
};

/// What one rod read while it stood alone.
struct RodReading {
    Metres length{};
    Metres diameter{};
    Ohms resistance{};

    friend bool operator==(const RodReading&, const RodReading&) = default;
};

struct Ground {
    std::string soil;  ///< a soil word of the tables; empty when not stated
    Fact<OhmMetres> resistivity;
    std::vector<SoilLayer> layers;
    std::vector<PinReading> pins;
    std::vector<RodReading> rods;
    std::optional<Season> read_when;   ///< layers, pins, rods and resistivity were found out
    Fact<double> thermal_resistivity;  ///< K m/W
    Fact<Celsius> temperature;

    friend bool operator==(const Ground&, const Ground&) = default;
};

}  // namespace toft::site
