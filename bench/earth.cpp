// Fields of wires in two layers of soil: cutting, moments, solving, on one core. A rod in a ring is
// also given to finite elements, so that there is a figure to hold ours against.

#include "field/electrode_shape.h"
#include "field/field.h"

#include "support/elements.h"

#include <benchmark/benchmark.h>

#include <cmath>
#include <stdexcept>

namespace toft::bench {
namespace {

using namespace field;

LayeredSoil layers(double upper, double lower, double thickness) {
    return {ohm_metres(upper), ohm_metres(lower), metres(thickness)};
}

Spot spot(double east, double north, double depth) {
    return {metres(east), metres(north), metres(depth)};
}

/// A mesh of ten metres with a rod at each corner and at the middle of each side: 200 pieces.
std::vector<Wire> mesh_with_rods() {
    const MeshShape shape{spot(0, 0, 0.5), metres(10), metres(10), 4, 4};
    std::vector<Wire> wires = mesh_wires(shape, metres(0.004));
    for (double x : {0.0, 5.0, 10.0}) {
        for (double y : {0.0, 5.0, 10.0}) {
            if (x == 5 && y == 5) continue;
            wires.push_back(rod_wire(spot(x, y, 0.5), metres(2.4), metres(0.008)));
        }
    }
    return wires;
}

void mesh_of_200_pieces(benchmark::State& state) {
    const auto soil = layers(100, static_cast<double>(state.range(0)), 1);
    const std::vector<Wire> wires = mesh_with_rods();
    double resistance = 0;
    std::size_t pieces = 0;
    for (auto _ : state) {
        const auto field = solve_field(soil, wires, {metres(0.64), 4});
        if (!field) return state.SkipWithError(field.error().front().says.c_str());
        resistance = field->joined().number();
        pieces = field->pieces().size();
    }
    state.counters["pieces"] = static_cast<double>(pieces);
    state.counters["ohms"] = resistance;
}

std::vector<Wire> rod_in_ring() {
    auto wires = ring_wires(spot(0, 0, 0.5), metres(4), metres(0.004), 36, 1);
    wires.push_back(rod_wire(spot(0, 0, 0), metres(2.4), metres(0.008)));
    return wires;
}

void rod_in_ring_by_wires(benchmark::State& state) {
    const auto wires = rod_in_ring();
    double resistance = 0;
    for (auto _ : state) {
        const auto field = solve_field(layers(100, 300, 1.5), wires, {metres(0.2), 1});
        if (!field) return state.SkipWithError(field.error().front().says.c_str());
        resistance = field->resistance(0, 0).number();
    }
    state.counters["ohms"] = resistance;
}

void rod_in_ring_by_getdp(benchmark::State& state) {
    support::TurnedField elements(100, 300, 1.5);
    elements.rod(2.4, 0.008);
    elements.ring(4, 0.004, 0.5);
    double resistance = 0;
    for (auto _ : state) resistance = elements.solve(0).rises.at(0);
    state.counters["ohms"] = resistance;
}

BENCHMARK(mesh_of_200_pieces)
    ->Arg(100)
    ->Arg(300)
    ->Arg(1000)
    ->Arg(10)
    ->Unit(benchmark::kMillisecond);
BENCHMARK(rod_in_ring_by_wires)->Unit(benchmark::kMillisecond);
BENCHMARK(rod_in_ring_by_getdp)->Unit(benchmark::kMillisecond)->Iterations(2)->UseRealTime();

}  // namespace
}  // namespace toft::bench
