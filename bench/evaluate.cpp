// Full evaluations of single schemes: every figure, every rule, nothing remembered, nothing
// allocated.

#include "search/evaluate.h"
#include "demo.h"
#include "search/candidates.h"
#include "support/counted_new.h"

#include <benchmark/benchmark.h>

#include <limits>

namespace toft::bench {
namespace {

/// Schemes that are cycled through: enough that no branch is learnt by heart.
constexpr std::size_t scheme_count = 4096;

/// Every so-manieth of all schemes of the job, so that all kinds are among them.
std::vector<study::RunScheme> some_schemes(const study::Setting<Silent>& setting) {
    const search::Shop shop = search::shop_for(setting);
    const auto routes = search::routes_of(shop, setting);
    const auto heads = search::heads_of(shop, setting);
    const std::size_t all = routes.size() * heads.size();
    std::vector<study::RunScheme> schemes;
    for (std::size_t i = 0; i < scheme_count; ++i) {
        const std::size_t place = i * all / scheme_count;
        schemes.push_back(
            search::scheme_of(routes[place / heads.size()], heads[place % heads.size()]));
    }
    return schemes;
}

/// Headroom clipped so that schemes without an end to their heat still add up.
double summed(double headroom) { return headroom < -1 ? -1 : headroom; }

/// The same sum by each rule judged on its own, without evaluate().
double sum_by_single_rules(const study::Setting<Silent>& setting,
                           const std::vector<study::RunScheme>& schemes) {
    double sum = 0;
    for (const study::RunScheme& scheme : schemes) {
        Silent silent;
        study::Figures<Silent> figures;
        study::work_out(silent, setting, scheme, study::Stage::heat, figures);
        double headroom = std::numeric_limits<double>::infinity();
        for (const rules::Rule& rule : rules::rulebook()) {
            if (!rule.info->graded) continue;
            const auto finding = rule.judge(silent, {setting, scheme, figures});
            if (finding.limited && 1 - finding.use < headroom) headroom = 1 - finding.use;
        }
        sum += summed(headroom);
    }
    return sum;
}

void evaluate_demo(benchmark::State& state) {
    Silent silent;
    const auto setting = study::prepare(silent, demo().catalogue, demo().job, 0, study::Corner{});
    const auto schemes = some_schemes(setting);
    const double expected = sum_by_single_rules(setting, schemes);
    search::Evaluation evaluation;
    long met = 0;
    const long before = support::allocations;
    double sum = 0;
    for (const study::RunScheme& scheme : schemes) {
        search::evaluate(setting, scheme, evaluation);
        sum += summed(evaluation.headroom);
        met += evaluation.worst != rules::Verdict::fails;
    }
    if (sum != expected) return state.SkipWithError("headrooms are not those of the single rules");
    std::size_t next = 0;
    for (auto _ : state) {
        search::evaluate(setting, schemes[next], evaluation);
        benchmark::DoNotOptimize(evaluation);
        next = (next + 1) % schemes.size();
    }
    if (support::allocations != before)
        return state.SkipWithError("an evaluation allocated memory");
    state.SetItemsProcessed(state.iterations());
    state.counters["sound_of_4096"] = static_cast<double>(met);
}

BENCHMARK(evaluate_demo);

}  // namespace
}  // namespace toft::bench
