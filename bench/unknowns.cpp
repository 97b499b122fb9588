// Unknowns and levers of a job, and the same by searching from scratch at every reading.

#include "../tests/support/examples.h"
#include "demo.h"

#include "lever/ideas.h"
#include "lever/levers.h"
#include "solve/run_solver.h"
#include "study/ground_memo.h"
#include "unknown/hanging.h"

#include <benchmark/benchmark.h>

#include <chrono>

namespace toft::bench {
namespace {

using Clock = std::chrono::steady_clock;

/// 0: three facts; 1: three-phase barn; 2: demo.
const site::Job& job_of(const benchmark::State& state) {
    static const site::Job jobs[] = {
        support::example_job("three-facts", demo().catalogue),
        support::example_job("three-phase-barn", demo().catalogue),
        support::example_job("demo", demo().catalogue),
    };
    return jobs[state.range(0)];
}

solve::Means means() { return {demo().catalogue, demo().book}; }

/// All open facts by way of `keep`: whether the first search's possible schemes are used.
double seconds_of(const site::Job& job, bool keep, std::size_t& decides) {
    study::GroundMemo memo;
    const auto start = Clock::now();
    search::Result found =
        search::search(demo().catalogue, demo().book, job, 0, solve::options_for(memo));
    if (!keep) found.all_possible = false;
    const solve::RunSolver solver(means(), job, found, memo);
    decides = 0;
    for (const auto& h : unknown::hanging_on(solver, demo().catalogue.find_out)) {
        decides += h.effect == unknown::Effect::decides;
    }
    return std::chrono::duration<double>(Clock::now() - start).count();
}

/// In turn, so that whatever else the machine does falls on both.
void scratch_over_unknowns(benchmark::State& state) {
    double kept = 0;
    double scratch = 0;
    for (auto _ : state) {
        std::size_t by_kept = 0;
        std::size_t by_search = 0;
        kept += seconds_of(job_of(state), true, by_kept);
        scratch += seconds_of(job_of(state), false, by_search);
        if (by_kept != by_search) {
            state.SkipWithError("the two do not agree on what decides");
            return;
        }
        state.counters["decides"] = static_cast<double>(by_kept);
    }
    state.counters["unknowns_ms"] = 1e3 * kept / static_cast<double>(state.iterations());
    state.counters["ratio"] = scratch / kept;
}

void levers_over_one_design(benchmark::State& state) {
    double whole = 0;
    double once = 0;
    for (auto _ : state) {
        const auto start = Clock::now();
        const lever::Weighed all = lever::weigh(means(), job_of(state));
        const auto middle = Clock::now();
        const solve::Solution one = solve::solve_run(means(), job_of(state));
        once += std::chrono::duration<double>(Clock::now() - middle).count();
        whole += std::chrono::duration<double>(middle - start).count();
        if (one.key != all.before.key) {
            state.SkipWithError("another scheme as things stand");
            return;
        }
        state.counters["tried"] = static_cast<double>(all.tried);
        state.counters["levers"] = static_cast<double>(all.levers.size());
    }
    state.counters["levers_ms"] = 1e3 * whole / static_cast<double>(state.iterations());
    state.counters["ratio"] = whole / once;
}

BENCHMARK(scratch_over_unknowns)->DenseRange(0, 2)->Unit(benchmark::kMillisecond);
BENCHMARK(levers_over_one_design)->DenseRange(0, 2)->Unit(benchmark::kMillisecond);

}  // namespace
}  // namespace toft::bench
