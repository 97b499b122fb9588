#include "guard/view.h"

#include <fmt/format.h>

namespace toft::guard {

namespace {

const site::Circuit& all_circuits() {
    static const site::Circuit circuit = [] {
        site::Circuit c;
        c.name = "every circuit";
        c.kind = site::CircuitKind::sub_board;
        return c;
    }();
    return circuit;
}

}  // namespace

std::size_t circuit_count(const View& view) {
    return view.building->circuits.empty() ? 1 : view.building->circuits.size();
}

const site::Circuit& circuit_at(const View& view, std::size_t i) {
    return view.building->circuits.empty() ? all_circuits() : view.building->circuits[i];
}

std::string circuit_name(const View& view, std::size_t i) {
    const std::string& name = circuit_at(view, i).name;
    return name.empty() ? fmt::format("circuit {}", i + 1) : name;
}

bool has_kind(const View& view, site::CircuitKind kind) {
    for (const site::Circuit& circuit : view.building->circuits) {
        if (circuit.kind == kind) return true;
    }
    return false;
}

bool feeds_sockets(const site::Circuit& circuit) {
    return circuit.kind == site::CircuitKind::socket_ring ||
           circuit.kind == site::CircuitKind::socket_radial ||
           circuit.kind == site::CircuitKind::sub_board;
}

}  // namespace toft::guard
