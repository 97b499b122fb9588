#include "terrain/surface_map.h"

#include <algorithm>
#include <cmath>

namespace toft::terrain {

namespace {

constexpr double round_levels[] = {0.01, 0.02, 0.05, 0.1, 0.2, 0.5, 0.7, 0.8, 0.9};
constexpr double same_level = 1e-9;

}  // namespace

bool drawable(const SurfaceGrid& grid) {
    if (grid.columns < 2 || grid.rows < 2) return false;
    for (const double step : {grid.step_east_m, grid.step_north_m}) {
        if (!std::isfinite(step) || step <= 0) return false;
    }
    if (grid.share.size() != grid.columns * grid.rows) return false;
    return std::all_of(grid.share.begin(), grid.share.end(),
                       [](double share) { return std::isfinite(share); });
}

double share_at(const SurfaceGrid& grid, GroundPoint place) {
    const double x = std::clamp((place.east_m - grid.origin.east_m) / grid.step_east_m, 0.0,
                                static_cast<double>(grid.columns - 1));
    const double y = std::clamp((place.north_m - grid.origin.north_m) / grid.step_north_m, 0.0,
                                static_cast<double>(grid.rows - 1));
    const auto column = std::min(static_cast<std::size_t>(x), grid.columns - 2);
    const auto row = std::min(static_cast<std::size_t>(y), grid.rows - 2);
    const double right = x - static_cast<double>(column);
    const double up = y - static_cast<double>(row);
    const double* at = grid.share.data() + row * grid.columns + column;
    const double south = at[0] * (1 - right) + at[1] * right;
    const double north = at[grid.columns] * (1 - right) + at[grid.columns + 1] * right;
    return south * (1 - up) + north * up;
}

std::optional<double> mark_at(const site::Job& job, const answer::LostNeutralAnswer& fault,
                              double level) {
    for (const double volts : fault.marks_v) {
        if (std::fabs(volts / job.intake.u0.number() - level) < same_level) return volts;
    }
    return std::nullopt;
}

std::vector<double> map_levels(const site::Job& job, const answer::LostNeutralAnswer& fault) {
    std::vector<double> levels(std::begin(round_levels), std::end(round_levels));
    for (const double volts : fault.marks_v) {
        const double level = volts / job.intake.u0.number();
        if (level > 0 && level < 1) levels.push_back(level);
    }
    std::sort(levels.begin(), levels.end());
    levels.erase(std::unique(levels.begin(), levels.end(),
                             [](double a, double b) { return b - a < same_level; }),
                 levels.end());
    return levels;
}

}  // namespace toft::terrain
