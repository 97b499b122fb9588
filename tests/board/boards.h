#pragma once
// Boards to draw: examples, and an invented one with as many ways as are asked for.

#include "board/places.h"
#include "picture/looking.h"
#include "picture/stage.h"

#include <string>
#include <vector>

namespace toft::board {

using picture::Example;
using picture::example;

/// A name of 60 characters with its number at the end.
inline std::string long_name(int number) {
    std::string name = "Sockets along the north wall, under the window and bench ";
    name += std::to_string(100 + number);
    return name;
}

/// The example's building with that many circuits of long names in place of its own, all kinds in
/// turn, every third without a device, designed as its first one is if that is.
inline Example many_ways(const std::string& name, int ways) {
    Example one = example(name);
    site::Building& far = one.job.buildings[1];
    const auto kinds = site::words<site::CircuitKind>().size();
    far.circuits.assign(static_cast<std::size_t>(ways), far.circuits.front());
    for (answer::SchemeAnswer& scheme : one.answer.schemes) {
        scheme.building.rcds = {{30, "A", false, {}}};
        scheme.building.circuits.clear();
    }
    for (int i = 0; i < ways; ++i) {
        site::Circuit& circuit = far.circuits[static_cast<std::size_t>(i)];
        circuit.name = long_name(i + 1);
        circuit.kind = static_cast<site::CircuitKind>(static_cast<std::size_t>(i) % kinds);
        circuit.phases = 1;
        circuit.device.reset();
        if (i % 3 == 1) circuit.device = site::NamedDevice{"BS 88-3", "", amperes(16)};
        for (answer::SchemeAnswer& scheme : one.answer.schemes) {
            scheme.building.rcds[0].covers.push_back(circuit.name);
            if (i % 3 != 0) continue;
            answer::CircuitAnswer design;
            design.number = i + 1;
            design.name = circuit.name;
            design.family = "flat twin and earth";
            design.live_mm2 = 2.5;
            design.cpc_mm2 = 1.5;
            design.length_m = 12.5;
            design.device = {"BS EN 61009", "B", "RCBO", 32, 6};
            design.drop_percent = answer::CircuitMatter{2.47, 5, 0.49};
            design.loop_ohm = answer::CircuitMatter{1.6, 1.37, 1.17};
            design.residual_clears = true;
            scheme.building.circuits.push_back(design);
        }
    }
    return one;
}

inline std::vector<parts::Way> ways_in(const Example& one, std::size_t scheme = 0) {
    return parts::ways_of(one.job, *site::find_building(one.job, one.job.runs[0].to),
                          one.answer.schemes.at(scheme));
}

}  // namespace toft::board
