#pragma once
// An earth electrode as the survey states it, and what a meter read of it.

#include "base/units.h"
#include "site/fact.h"
#include "site/words.h"

#include <optional>
#include <vector>

namespace toft::site {

/// One reading of a test by fall of potential: distances from the electrode.
struct SpikeReading {
    Metres current{};    ///< to the current spike
    Metres potential{};  ///< to the potential spike, on the same line
    Ohms resistance{};

    friend bool operator==(const SpikeReading&, const SpikeReading&) = default;
};

struct Electrode {
    ElectrodeKind kind = ElectrodeKind::rods;
    Fact<double> rods;  ///< number
    Arrangement arrangement = Arrangement::line;
    Fact<Metres> spacing;   ///< of rods; a rod's length when not stated
    Fact<Metres> length;    ///< of one rod in the ground, of a wire, of a side
    Fact<Metres> width;     ///< of the other side; for rings nothing: length is the diameter
    Fact<Metres> diameter;  ///< of rod or wire
    Fact<Metres> depth;     ///< of wires and centres of plates; of the tops of rods
    std::optional<int> meshes_along, meshes_across;
    Answer membrane = Answer::unknown;  ///< a membrane or insulation under a foundation
    Fact<Ohms> resistance;              ///< measured; then the shape does not matter
    std::vector<SpikeReading> spikes;
    Fact<Metres> from_house_earth;  ///< to the nearest buried metal on the house's earth

    /// Something was said of it.
    bool stated() const {
        return rods.known || length.known || resistance.known || !spikes.empty() ||
               kind != ElectrodeKind::rods;
    }

    friend bool operator==(const Electrode&, const Electrode&) = default;
};

}  // namespace toft::site
