// Choosing sizes for a whole tree at once: alone, growing to 1000 branches, and beside Cbc on the
// same problems as integer programs, in turn. Both must find the same price.

#include "spread/solve.h"
#include "support/cbc.h"
#include "support/spread_draws.h"

#include <benchmark/benchmark.h>

#include <algorithm>
#include <cmath>
#include <ctime>
#include <vector>

namespace toft::bench {
namespace {

using support::Shape;

constexpr unsigned problems = 10;  ///< of each size and shape
constexpr double cbc_seconds = 120;

/// Processor time of this program: other users of the machine do not count.
double seconds_now() { return static_cast<double>(std::clock()) / CLOCKS_PER_SEC; }

std::vector<spread::Problem> problems_of(Shape shape, std::int64_t branches, unsigned count,
                                         std::size_t resources = 2) {
    std::vector<spread::Problem> all;
    for (unsigned seed = 1; seed <= count; ++seed) {
        all.push_back(
            support::drawn_sizing(shape, static_cast<std::size_t>(branches), seed, resources));
    }
    return all;
}

/// One iteration solves all of them; `ms_each` is the mean, `ms_worst` the longest.
void solve_sizes(benchmark::State& state, Shape shape, std::size_t resources = 2) {
    const auto all = problems_of(shape, state.range(0), problems, resources);
    double offers = 0;
    double proved = 0;
    double worst = 0;
    double sum = 0;
    for (auto _ : state) {
        offers = proved = 0;
        for (const spread::Problem& problem : all) {
            const double began = seconds_now();
            const auto answer = spread::solve(problem);
            const double took = seconds_now() - began;
            if (!answer) return state.SkipWithError(answer.error().front().says.c_str());
            worst = std::max(worst, took);
            sum += took;
            offers += static_cast<double>(answer->offers);
            proved += answer->standing == spread::Standing::proved ? 1 : 0;
        }
    }
    state.counters["ms_each"] = 1000 * sum / problems / static_cast<double>(state.iterations());
    state.counters["ms_worst"] = 1000 * worst;
    state.counters["offers"] = offers / problems;
    state.counters["proved"] = proved / problems;
}

/// `ratio`: how many times as long Cbc takes, start and reading of its file included, where it
/// proves its answer in time; `in_time`: how often it does.
void cbc_over_solve(benchmark::State& state, Shape shape) {
    const unsigned count = state.range(0) >= 100 ? 5 : problems;
    const auto all = problems_of(shape, state.range(0), count);
    double ours = 0;
    double theirs = 0;
    double in_time = 0;
    for (auto _ : state) {
        for (const spread::Problem& problem : all) {
            const double began = seconds_now();
            const auto answer = spread::solve(problem);
            ours += seconds_now() - began;
            const auto other = support::ask_cbc(problem, cbc_seconds);
            theirs += other.seconds;
            if (!answer) return state.SkipWithError(answer.error().front().says.c_str());
            if (!other.proved || !other.price) continue;
            in_time += 1;
            if (std::fabs(answer->price / *other.price - 1) > 1e-8) {
                return state.SkipWithError("the two do not find the same price");
            }
        }
    }
    state.counters["ratio"] = theirs / ours;
    state.counters["ms_cbc"] = 1000 * theirs / count;
    state.counters["ms_ours"] = 1000 * ours / count;
    state.counters["in_time"] = in_time / count;
}

void sizes(benchmark::internal::Benchmark* bench) {
    bench->Arg(10)->Arg(12)->Arg(40)->Arg(100)->Arg(300)->Arg(1000)->Unit(benchmark::kMillisecond);
}

void few_sizes(benchmark::internal::Benchmark* bench) {
    bench->Arg(12)->Arg(40)->Arg(100)->Unit(benchmark::kMillisecond);
}

void sizes_with_cbc(benchmark::internal::Benchmark* bench) {
    bench->Arg(10)->Arg(12)->Arg(40)->Arg(100)->Unit(benchmark::kMillisecond)->Iterations(1);
}

BENCHMARK_CAPTURE(solve_sizes, tree, Shape::tree)->Apply(sizes);
BENCHMARK_CAPTURE(solve_sizes, star, Shape::star)->Apply(sizes);
BENCHMARK_CAPTURE(solve_sizes, chain, Shape::chain)->Apply(sizes);
BENCHMARK_CAPTURE(solve_sizes, tree_of_3_resources, Shape::tree, 3)->Apply(few_sizes);
BENCHMARK_CAPTURE(solve_sizes, tree_of_4_resources, Shape::tree, 4)->Apply(few_sizes);
BENCHMARK_CAPTURE(solve_sizes, tree_of_8_resources, Shape::tree, 8)->Arg(12);
BENCHMARK_CAPTURE(cbc_over_solve, tree, Shape::tree)->Apply(sizes_with_cbc);
BENCHMARK_CAPTURE(cbc_over_solve, star, Shape::star)->Apply(sizes_with_cbc);
BENCHMARK_CAPTURE(cbc_over_solve, chain, Shape::chain)->Apply(sizes_with_cbc);

}  // namespace
}  // namespace toft::bench
