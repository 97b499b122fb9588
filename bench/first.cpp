// What a page waits for after each change of the demo job, beside the whole answer of it.

#include "answer/first.h"
#include "codec/answer.h"
#include "demo.h"

#include <benchmark/benchmark.h>

#include <chrono>

namespace toft::bench {
namespace {

answer::Question question() { return {demo().catalogue, demo().book, demo().job}; }

std::string first() { return codec::write_first(answer::first(question(), "")); }

std::string whole() {
    return codec::write_answer(answer::design(question()), codec::Layout::one_line);
}

/// Why the first answer is none of this job; empty when it is.
std::string disagreement() {
    const auto quick = answer::first(question(), "").answer.schemes;
    const auto schemes = answer::design(question()).schemes;
    if (quick.size() != schemes.size() || quick.empty()) return "another number of schemes";
    for (std::size_t i = 0; i < quick.size(); ++i) {
        if (quick[i].key != schemes[i].key || quick[i].price.total != schemes[i].price.total)
            return "another scheme " + quick[i].key;
    }
    return "";
}

void first_answer(benchmark::State& state) {
    if (const std::string why = disagreement(); !why.empty()) state.SkipWithError(why.c_str());
    for (auto step : state) benchmark::DoNotOptimize(first());
}
BENCHMARK(first_answer)->Unit(benchmark::kMillisecond);

/// `share` is what the first answer takes of the time of the whole one.
void whole_answer(benchmark::State& state) {
    using Clock = std::chrono::steady_clock;
    double quick = 0;
    double all = 0;
    for (auto step : state) {
        const auto start = Clock::now();
        benchmark::DoNotOptimize(first());
        const auto between = Clock::now();
        benchmark::DoNotOptimize(whole());
        const auto end = Clock::now();
        quick += std::chrono::duration<double>(between - start).count();
        all += std::chrono::duration<double>(end - between).count();
        state.SetIterationTime(std::chrono::duration<double>(end - between).count());
    }
    state.counters["share"] = quick / all;
}
BENCHMARK(whole_answer)->Unit(benchmark::kMillisecond)->UseManualTime();

}  // namespace
}  // namespace toft::bench
