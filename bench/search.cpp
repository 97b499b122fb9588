// The search of the demo job, and the plain loop over all its schemes as a peer.

#include "search/search.h"
#include "../tests/support/brute_force.h"
#include "demo.h"

#include <benchmark/benchmark.h>

#include <algorithm>
#include <chrono>

namespace toft::bench {
namespace {

search::Result searched() {
    return search::search(demo().catalogue, demo().book, demo().job, 0, {});
}

support::BruteResult plain_loop() {
    return support::BruteForce(demo().catalogue, demo().book, demo().job).run();
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
    if (found.sound != static_cast<long>(plain.sound.size())) return "another number of sound ones";
    if (found.conditional != static_cast<long>(plain.conditional.size())) {
        return "another number of conditional ones";
    }
    if (plain.sound.empty() || !found.any_sound()) return "nothing sound";
    if (found.contenders.front().key != best_of(plain.sound).key) return "another best scheme";
    return "";
}

/// Looked into once, before anything is timed.
bool refused(benchmark::State& state) {
    static const std::string why = disagreement(searched(), plain_loop());
    if (why.empty()) return false;
    state.SkipWithError(("the search and the plain loop disagree: " + why).c_str());
    return true;
}

void search_demo(benchmark::State& state) {
    if (refused(state)) return;
    search::Result found;
    for (auto _ : state) {
        found = searched();
        benchmark::DoNotOptimize(found);
    }
    state.counters["candidates"] = static_cast<double>(found.candidates);
    state.counters["judged_in_pairs"] = static_cast<double>(found.evaluated);
    state.counters["sound"] = static_cast<double>(found.sound);
    state.SetLabel(found.contenders.front().key);
    state.SetItemsProcessed(state.iterations() * found.candidates);
}

void plain_loop_demo(benchmark::State& state) {
    if (refused(state)) return;
    support::BruteResult plain;
    for (auto _ : state) {
        plain = plain_loop();
        benchmark::DoNotOptimize(plain);
    }
    state.SetLabel(best_of(plain.sound).key);
    state.SetItemsProcessed(state.iterations() * plain.candidates);
}

/// Both in turn, so that whatever else the machine does falls on both.
void plain_loop_over_search(benchmark::State& state) {
    if (refused(state)) return;
    using Clock = std::chrono::steady_clock;
    double of_search = 0;
    double of_loop = 0;
    for (auto _ : state) {
        const auto start = Clock::now();
        benchmark::DoNotOptimize(searched());
        const auto middle = Clock::now();
        benchmark::DoNotOptimize(plain_loop());
        of_search += std::chrono::duration<double>(middle - start).count();
        of_loop += std::chrono::duration<double>(Clock::now() - middle).count();
    }
    state.counters["ratio"] = of_loop / of_search;
}

BENCHMARK(search_demo)->Unit(benchmark::kMillisecond);
BENCHMARK(plain_loop_demo)->Unit(benchmark::kMillisecond);
BENCHMARK(plain_loop_over_search)->Unit(benchmark::kMillisecond);

}  // namespace
}  // namespace toft::bench
