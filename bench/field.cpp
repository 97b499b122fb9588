// Fields of wires in layers of soil: images, cutting, moments, solving, the map of the surface, the
// reach of rods, on one core. A rod in a ring is also given to finite elements, so that there is a
// figure to hold ours against.

#include "field/field.h"
#include "field/electrode_shape.h"
#include "field/rod_reach.h"
#include "field/surface_map.h"

#include "support/elements.h"

#include <benchmark/benchmark.h>

#include <cstdint>

namespace toft::bench {
namespace {

using namespace field;

LayeredSoil layers(double upper, double lower, double thickness) {
    return {ohm_metres(upper), ohm_metres(lower), metres(thickness)};
}

Spot spot(double east, double north, double depth) {
    return {metres(east), metres(north), metres(depth)};
}

/// A dry crust over two layers.
Strata three_layers() {
    return {{{ohm_metres(1000), metres(0.4)}, {ohm_metres(100), metres(1.5)}}, ohm_metres(300)};
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

void mesh_in_three_layers(benchmark::State& state) {
    const std::vector<Wire> wires = mesh_with_rods();
    double resistance = 0;
    for (auto _ : state) {
        const auto field = solve_field(three_layers(), wires, {metres(0.64), 4});
        if (!field) return state.SkipWithError(field.error().front().says.c_str());
        resistance = field->joined().number();
    }
    state.counters["ohms"] = resistance;
}

void images_of_layers(benchmark::State& state) {
    Strata soil = three_layers();
    for (std::int64_t i = 2; i < state.range(0); ++i) {
        soil.layers.push_back({ohm_metres(i % 2 == 0 ? 50 : 500), metres(1)});
    }
    double error = 0;
    for (auto _ : state) error = fit_images(soil).error;
    state.counters["error"] = error;
}

/// 80 by 60 places over a rod in a ring: about 40 pieces.
void map_of_surface(benchmark::State& state, const Strata& soil) {
    auto wires = ring_wires(spot(0, 0, 0.5), metres(4), metres(0.004), 24, 1);
    wires.push_back(rod_wire(spot(0, 0, 0), metres(2.4), metres(0.008)));
    const auto field = solve_field(soil, wires, {metres(0.6), 1});
    if (!field) return state.SkipWithError(field.error().front().says.c_str());
    const Driven driven = field->driven({amperes(1), amperes(0)});
    for (auto _ : state) {
        const auto map = map_surface(driven, {spot(-6, -4, 0), metres(12), metres(9), 80, 60});
        if (!map) return state.SkipWithError(map.error().front().says.c_str());
        benchmark::DoNotOptimize(contours(*map, {volts(1), volts(2), volts(5), volts(10)}));
    }
    state.counters["pieces"] = static_cast<double>(field->pieces().size());
}

/// Every length of one rod up to eight sections of 1.2 m, soil made ready included.
void rod_of_eight_sections(benchmark::State& state) {
    double resistance = 0;
    for (auto _ : state) {
        const auto medium = medium_of(three_layers());
        const auto all = rod_lengths(*medium, {metres(0.016), metres(0), metres(1.2), 8});
        if (!all) return state.SkipWithError(all.error().front().says.c_str());
        resistance = all->back().resistance.number();
    }
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
BENCHMARK(mesh_in_three_layers)->Unit(benchmark::kMillisecond);
BENCHMARK(images_of_layers)->Arg(2)->Arg(4)->Arg(8)->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(map_of_surface, two_layers, strata({ohm_metres(100), ohm_metres(300), metres(1)}))
    ->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(map_of_surface, three_layers, three_layers())->Unit(benchmark::kMillisecond);
BENCHMARK(rod_of_eight_sections)->Unit(benchmark::kMillisecond);
BENCHMARK(rod_in_ring_by_wires)->Unit(benchmark::kMillisecond);
BENCHMARK(rod_in_ring_by_getdp)->Unit(benchmark::kMillisecond)->Iterations(2)->UseRealTime();

}  // namespace
}  // namespace toft::bench
