// The search of the demo job, and the plain loop over all its schemes as a peer.

#include "search/search.h"
#include "../tests/support/brute_force.h"
#include "demo.h"

#include <benchmark/benchmark.h>

#include <algorithm>
#include <chrono>

namespace toft::bench {
namespace {

search::Result searched(const site::Job& job) {
    return search::search(demo().catalogue, demo().book, job, 0, {});
}

support::BruteResult plain_loop(const site::Job& job) {
    return support::BruteForce(demo().catalogue, demo().book, job).run();
}

/// The cheapest, then the roomiest, then the most dependable, then the first by key.
const support::BruteSound& best_of(const std::vector<support::BruteSound>& sound) {
    return *std::min_element(sound.begin(), sound.end(), [](const auto& a, const auto& b) {
        return std::make_tuple(a.total, -a.headroom, -a.dependability, a.key) <
               std::make_tuple(b.total, -b.headroom, -b.dependability, b.key);
    });
}

/// Why the search does not agree with the plain loop; empty when it does.
std::string disagreement(const search::Result& found, const support::BruteResult& plain) {
    if (found.candidates != plain.candidates) return "another number of candidates";
    if (found.evaluated + found.set_aside + found.fallen != found.candidates) {
        return "schemes that are not accounted for";
    }
    if (plain.sound.empty() || !found.any_sound()) return "nothing sound";
    if (found.contenders.front().key != best_of(plain.sound).key) return "another best scheme";
    return "";
}

/// The demo with the first so many families and device standards of a shop that grows.
site::Job offering(std::size_t count) {
    static const std::vector<std::string> families{
        "armoured XLPE copper", "armoured PVC copper",    "armoured XLPE aluminium",
        "flat twin and earth",  "unarmoured XLPE copper", "unarmoured PVC copper"};
    static const std::vector<std::string> standards{"BS 88-3",     "BS EN 60898",   "BS 88-2",
                                                    "BS EN 61009", "BS EN 60947-2", "BS 1361"};
    site::Job job = demo().job;
    const auto first = [count](const std::vector<std::string>& words) {
        return std::vector<std::string>(words.begin(),
                                        words.begin() + static_cast<std::ptrdiff_t>(count));
    };
    job.wishes.offer = first(families);
    job.wishes.devices = first(standards);
    return job;
}

/// A search by itself, its counts beside its time.
void run_search(benchmark::State& state, const site::Job& job) {
    search::Result found;
    for (auto _ : state) {
        found = searched(job);
        benchmark::DoNotOptimize(found);
    }
    state.counters["candidates"] = static_cast<double>(found.candidates);
    state.counters["judged"] = static_cast<double>(found.evaluated);
    state.counters["set_aside"] = static_cast<double>(found.set_aside);
    state.SetItemsProcessed(state.iterations() * found.candidates);
}

void search_demo(benchmark::State& state) { run_search(state, demo().job); }

/// Families and standards offered: as many as the argument says.
void search_growing_shop(benchmark::State& state) {
    run_search(state, offering(static_cast<std::size_t>(state.range(0))));
}

/// The demo with so many circuits of known length, heaters and sockets in turn.
site::Job with_circuits(std::size_t count) {
    site::Job job = demo().job;
    site::Building& b = job.buildings.at(1);
    b.circuits.clear();
    for (std::size_t i = 0; i < count; ++i) {
        site::Circuit c;
        c.name = "circuit " + std::to_string(i + 1);
        c.kind = i % 2 ? site::CircuitKind::socket_radial : site::CircuitKind::fixed_load;
        const double watts = 4000.0 / static_cast<double>(count);
        c.load_w = {true, watts, watts, site::Standing::measured};
        const Metres length = metres(4 + static_cast<double>(i));
        c.length = {true, length, length, site::Standing::measured};
        b.circuits.push_back(c);
    }
    return job;
}

/// Circuits behind the run: as many as the argument says.
void search_with_circuits(benchmark::State& state) {
    run_search(state, with_circuits(static_cast<std::size_t>(state.range(0))));
}

/// Search and plain loop in turn, so that whatever else the machine does falls on both.
void run_both(benchmark::State& state, const site::Job& job) {
    using Clock = std::chrono::steady_clock;
    double of_search = 0;
    double of_loop = 0;
    for (auto _ : state) {
        const auto start = Clock::now();
        const search::Result found = searched(job);
        const auto middle = Clock::now();
        const support::BruteResult plain = plain_loop(job);
        of_loop += std::chrono::duration<double>(Clock::now() - middle).count();
        of_search += std::chrono::duration<double>(middle - start).count();
        const std::string why = disagreement(found, plain);
        if (why.empty()) continue;
        state.SkipWithError(("the search and the plain loop disagree: " + why).c_str());
        return;
    }
    state.counters["candidates"] = static_cast<double>(searched(job).candidates);
    state.counters["search_ms"] = 1e3 * of_search / static_cast<double>(state.iterations());
    state.counters["ratio"] = of_loop / of_search;
}

void plain_loop_over_search(benchmark::State& state) { run_both(state, demo().job); }

void plain_loop_over_search_growing_shop(benchmark::State& state) {
    run_both(state, offering(static_cast<std::size_t>(state.range(0))));
}

BENCHMARK(search_demo)->Unit(benchmark::kMillisecond);
BENCHMARK(search_growing_shop)->DenseRange(1, 6)->Unit(benchmark::kMillisecond);
BENCHMARK(search_with_circuits)->Arg(1)->Arg(5)->Arg(20)->Unit(benchmark::kMillisecond);
BENCHMARK(plain_loop_over_search)->Unit(benchmark::kMillisecond);
BENCHMARK(plain_loop_over_search_growing_shop)->DenseRange(1, 6)->Unit(benchmark::kMillisecond);

}  // namespace
}  // namespace toft::bench
