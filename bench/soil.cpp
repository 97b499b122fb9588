// Soil from twelve readings: choosing layers, ranges and all; and the bare fit of two layers beside
// Ceres on the same readings, the same prepared model and the same start.

#include "soil/layer_choice.h"
#include "soil/soil_fit.h"

#include <benchmark/benchmark.h>
#include <ceres/ceres.h>

#include <chrono>
#include <cmath>

namespace toft::bench {
namespace {

using namespace soil;

/// Readings of IEEE Std 80-2000, Annex E, soil type 1 (source: tests/published/soil_pins.case).
std::vector<SpacingReading> twelve_readings() {
    const double a[] = {0.31,  0.92,  1.52,  4.57,  6.10,  9.15,
                        15.24, 21.34, 27.44, 33.54, 39.63, 45.73};
    const double r[] = {29.73, 15.33, 9.97, 3.85, 3.15, 2.49, 1.90, 1.56, 1.32, 1.15, 1.01, 0.90};
    std::vector<SpacingReading> readings;
    for (std::size_t i = 0; i < 12; ++i) {
        readings.push_back({{PinArray::wenner, metres(a[i]), {}, {}}, ohms(r[i])});
    }
    return readings;
}

std::vector<Spread> spreads_of(const std::vector<SpacingReading>& readings) {
    std::vector<Spread> spreads;
    for (const SpacingReading& reading : readings) spreads.push_back(reading.spread);
    return spreads;
}

Taken taken_of(const std::vector<SpacingReading>& readings, const Sounding& sounding) {
    Taken taken;
    for (const SpacingReading& reading : readings) {
        taken.ln.push_back(std::log(apparent_resistivity(reading).number()));
    }
    taken.weight.assign(readings.size(), 1);
    taken.look = [&sounding](const LogSoil& soil) { return sounding.look(soil); };
    return taken;
}

/// Gives Ceres our slopes, so that only the solvers differ.
class Cost : public ceres::CostFunction {
public:
    explicit Cost(const Taken& taken) : taken_(&taken) {
        set_num_residuals(static_cast<int>(taken.ln.size()));
        mutable_parameter_block_sizes()->push_back(3);
    }

    bool Evaluate(double const* const* soil, double* misses, double** slopes) const override {
        const std::size_t n = taken_->ln.size();
        const Sight sight = taken_->look(LogSoil(soil[0], soil[0] + 3));
        for (std::size_t i = 0; i < n; ++i) {
            misses[i] = taken_->ln[i] - sight.seen[i];
            if (!std::isfinite(misses[i])) return false;
            if (!slopes || !slopes[0]) continue;
            for (std::size_t f = 0; f < 3; ++f) slopes[0][3 * i + f] = -sight.slopes[i + n * f];
        }
        return true;
    }

private:
    const Taken* taken_;
};

double sum_by_ceres(const Taken& taken, LogSoil start) {
    ceres::Problem problem;
    problem.AddResidualBlock(new Cost(taken), nullptr, start.data());
    ceres::Solver::Options options;
    options.logging_type = ceres::SILENT;
    options.max_num_iterations = 300;
    options.function_tolerance = 1e-13;
    options.gradient_tolerance = 1e-14;
    options.parameter_tolerance = 1e-10;
    ceres::Solver::Summary summary;
    ceres::Solve(options, &problem, &summary);
    return 2 * summary.final_cost;
}

void whole_fit(benchmark::State& state) {
    const auto readings = twelve_readings();
    double layers = 0;
    for (auto _ : state) {
        const auto fit = fit_soil(readings);
        if (!fit) return state.SkipWithError(fit.error().front().says.c_str());
        layers = static_cast<double>(fit->best.layers.size() + 1);
    }
    state.counters["layers"] = layers;
}

void ceres_over_settle(benchmark::State& state) {
    using Clock = std::chrono::steady_clock;
    const auto readings = twelve_readings();
    const Sounding sounding(spreads_of(readings));
    const Taken taken = taken_of(readings, sounding);
    const LogSoil start{std::log(60), std::log(250), std::log(2)};
    const Box box{LogSoil(3, -10), LogSoil(3, 15)};
    double ours = 0;
    double theirs = 0;
    Clock::duration our_time{};
    Clock::duration their_time{};
    for (auto _ : state) {
        const auto began = Clock::now();
        ours = settle(taken, box, start, 300).sum;
        const auto between = Clock::now();
        theirs = sum_by_ceres(taken, start);
        our_time += between - began;
        their_time += Clock::now() - between;
    }
    if (std::fabs(ours / theirs - 1) > 1e-6) {
        return state.SkipWithError("the two do not find the same soil");
    }
    state.counters["ratio"] = std::chrono::duration<double>(their_time) / our_time;
}

BENCHMARK(whole_fit)->Unit(benchmark::kMillisecond);
BENCHMARK(ceres_over_settle)->Unit(benchmark::kMillisecond);

}  // namespace
}  // namespace toft::bench
