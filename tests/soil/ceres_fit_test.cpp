// The same readings fitted by Ceres, a general solver of least squares, from the same model of what
// is read but with slopes of its own taking and no start of ours.

#include "soil/soil_fit.h"

#include "soil/soundings.h"

#include <ceres/ceres.h>

namespace toft::soil {
namespace {

struct Misses {
    const std::vector<SpacingReading>* readings;
    std::vector<Spread> spreads;

    bool operator()(double const* const* soil, double* misses) const {
        const std::size_t n = readings->size();
        const Sight sight = Sounding(spreads).look(LogSoil(soil[0], soil[0] + figures));
        for (std::size_t i = 0; i < n; ++i) {
            if (!std::isfinite(sight.seen[i])) return false;  // far outside what can be
            misses[i] = std::log(apparent_resistivity((*readings)[i]).number()) - sight.seen[i];
        }
        return true;
    }
    std::size_t figures;
};

/// The best soil by Ceres from `start`, and its sum of squares.
std::pair<field::Strata, double> by_ceres(const std::vector<SpacingReading>& readings,
                                          const field::Strata& start) {
    LogSoil soil = log_soil(start);
    auto* misses = new Misses{&readings, {}, soil.size()};
    for (const SpacingReading& reading : readings) misses->spreads.push_back(reading.spread);
    auto* cost = new ceres::DynamicNumericDiffCostFunction<Misses, ceres::CENTRAL>(misses);
    cost->AddParameterBlock(static_cast<int>(soil.size()));
    cost->SetNumResiduals(static_cast<int>(readings.size()));
    ceres::Problem problem;
    problem.AddResidualBlock(cost, nullptr, soil.data());
    ceres::Solver::Options options;
    options.logging_type = ceres::SILENT;
    options.max_num_iterations = 300;
    options.function_tolerance = 1e-14;
    options.gradient_tolerance = 1e-14;
    options.parameter_tolerance = 1e-12;
    ceres::Solver::Summary summary;
    ceres::Solve(options, &problem, &summary);
    EXPECT_TRUE(summary.IsSolutionUsable());
    return {strata_of(soil), 2 * summary.final_cost};
}

void compare(const std::vector<SpacingReading>& readings, const field::Strata& start) {
    const SoilFit ours = fit_of(readings);
    ASSERT_EQ(ours.best.layers.size(), start.layers.size());
    const auto [theirs, sum] = by_ceres(readings, start);
    EXPECT_NEAR(ours.best.deepest / theirs.deepest, 1, 1e-3);
    for (std::size_t i = 0; i < start.layers.size(); ++i) {
        EXPECT_NEAR(ours.best.layers[i].resistivity / theirs.layers[i].resistivity, 1, 1e-3);
        EXPECT_NEAR(ours.best.layers[i].thickness / theirs.layers[i].thickness, 1, 1e-3);
    }
    const double our_sum = ours.misfit * ours.misfit * static_cast<double>(readings.size());
    EXPECT_NEAR(our_sum, sum, 1e-9 + 1e-6 * sum);
}

TEST(CeresFit, FindsTheSameSoilFromReadingsWithoutError) {
    compare(read_over(two(150, 1.5, 40), {0.5, 1, 2, 4, 8, 16}), two(80, 3, 80));
    compare(read_over(two(50, 2, 500), {0.5, 1, 2, 4, 8, 16}), two(80, 1, 90));
    compare(read_over(three(200, 1, 30, 3, 500), usual_spacings), three(150, 0.7, 60, 4, 300));
}

TEST(CeresFit, FindsTheSameSoilFromReadingsTakenInTheField) {
    compare(ieee_80_soil_1(3), two(90, 4, 250));
    compare(ieee_80_soil_1(2), two(90, 4, 250));
    compare(remembered_falling(), two(300, 4, 100));
    compare(remembered_rising(), two(150, 2, 900));
}

TEST(CeresFit, FindsNothingBetterFarFromOurBest) {
    const auto readings = remembered_falling();
    const SoilFit ours = fit_of(readings);
    const double our_sum = ours.misfit * ours.misfit * static_cast<double>(readings.size());
    for (double h : {0.5, 1.0, 3.0, 8.0}) {
        for (double upper : {100.0, 400.0, 1500.0}) {
            EXPECT_GE(by_ceres(readings, two(upper, h, 150)).second, our_sum * (1 - 1e-6));
        }
    }
}

}  // namespace
}  // namespace toft::soil
