// The chance that a scheme's rules hold: samples a second from pools of prepared settings, against
// preparing the job anew for each.

#include "tolerance/tolerance.h"
#include "demo.h"
#include "search/search.h"
#include "tolerance/blend.h"
#include "tolerance/tally.h"

#include <benchmark/benchmark.h>

#include <chrono>

namespace toft::bench {
namespace {

using tolerance::Wish;

/// The demo with wide ranges. Loads decide which cables and devices its circuits may have, which no
/// pool holds: they vary where only the run's own rules are open.
Wish wide(bool loads) {
    Wish wish;
    wish.length = 68;
    wish.temperature = 10;
    wish.ze = 60;
    if (loads) wish.load = 78;
    return wish;
}

const study::RunScheme& cheapest() {
    static const study::RunScheme scheme = [] {
        search::Options options;
        options.first_only = true;
        return search::search(demo().catalogue, demo().book, demo().job, 0, options)
            .contenders.front()
            .scheme;
    }();
    return scheme;
}

/// What the demo's scheme is asked: the rules that do not hold at the worst, or every one.
struct Asked {
    tolerance::Place place{demo().catalogue, demo().job, study::RunAt{0}};
    Wish wish;
    std::vector<tolerance::Varied> varied = tolerance::varied_in(place, wish);
    tolerance::Subject subject{place, varied, cheapest()};
    std::array<bool, rules::rule_count> sure{};

    explicit Asked(bool every_rule) : wish(wide(!every_rule)) {
        if (every_rule) return;
        const auto found = tolerance::tolerance_of(place, cheapest(), wish);
        for (std::size_t i = 0; i < rules::rule_count; ++i) {
            for (const auto& r : found.rules) {
                if (r.rule == rules::rulebook()[i].info) sure[i] = r.holds_at_worst;
            }
        }
    }
};

double seconds_of(std::chrono::steady_clock::time_point since) {
    return std::chrono::duration<double>(std::chrono::steady_clock::now() - since).count();
}

/// Samples from pools alone; the pools are filled before the clock runs.
void samples(benchmark::State& state, bool every_rule) {
    const Asked asked(every_rule);
    tolerance::Blend blend(asked.place, asked.varied, asked.wish.pool);
    constexpr std::size_t many = 1 << 15;
    double one_by_one = 0;
    for (auto _ : state) {
        tolerance::Tally tally(cheapest(), asked.sure);
        if (!tally_blend(asked.subject, blend, tally, many)) {
            return state.SkipWithError("the demo's settings cannot be blended");
        }
        benchmark::DoNotOptimize(tally.result(0));
    }
    const auto since = std::chrono::steady_clock::now();
    tolerance::Tally fast(cheapest(), asked.sure);
    tally_blend(asked.subject, blend, fast, many);
    const double blended = seconds_of(since) / many;
    const auto again = std::chrono::steady_clock::now();
    constexpr std::size_t few = 1 << 10;
    const auto slow = chances_one_by_one(asked.subject, asked.sure, few);
    one_by_one = seconds_of(again) / few;
    const double apart = slow.all.holds - fast.result(0).all.holds;
    if (apart * apart > 0.03 * 0.03) return state.SkipWithError("the two ways do not agree");
    state.SetItemsProcessed(state.iterations() * static_cast<long>(many));
    state.counters["ratio_to_preparing"] = one_by_one / blended;
    state.counters["robust"] = fast.result(0).all.holds;
    state.counters["groups"] = static_cast<double>(blend.groups());
}

void open_rules(benchmark::State& state) { samples(state, false); }
void every_rule(benchmark::State& state) { samples(state, true); }

BENCHMARK(open_rules)->Unit(benchmark::kMillisecond);
BENCHMARK(every_rule)->Unit(benchmark::kMillisecond);

/// All that `toft tolerance` works out, pools and bounds too.
void whole_tolerance(benchmark::State& state) {
    const tolerance::Place place{demo().catalogue, demo().job, study::RunAt{0}};
    std::size_t taken = 0;
    for (auto _ : state) {
        const auto found = tolerance::tolerance_of(place, cheapest(), wide(true));
        taken = found.samples;
        benchmark::DoNotOptimize(found);
    }
    state.counters["samples"] = static_cast<double>(taken);
}

BENCHMARK(whole_tolerance)->Unit(benchmark::kMillisecond);

}  // namespace
}  // namespace toft::bench
