#include "terrain/half_ball_map.h"

#include "base/pi.h"
#include "terrain/figures.h"
#include "terrain/sheet.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace toft::terrain {

namespace {

constexpr std::size_t longest_side = 90;  // of the grid, figures
constexpr int circle_parts = 96;

constexpr double house_half_m = 2.5;  // drawn: the house's size is not surveyed
constexpr double building_half_m = 1.5;

bool length_known(double metres) { return std::isfinite(metres) && metres > 0; }

/// The electrode as seen from the house's earth: in the direction of the outbuilding where the
/// survey has its place. The half ball's edge is the nearest metal, so its radius comes on top of
/// the answer's distance.
GroundPoint electrode_place(const site::Job& job, const answer::GroundSideAnswer& side) {
    const double away = side.separation.house_radius_m + side.separation.distance_m;
    const site::Building* building = site::find_building(job, side.building);
    if (!building || !building->at_x_m || !building->at_y_m) return {away, 0};
    const double size = std::hypot(*building->at_x_m, *building->at_y_m);
    if (!length_known(size)) return {away, 0};
    return {away * *building->at_x_m / size, away * *building->at_y_m / size};
}

SurfaceGrid grid_round(GroundPoint electrode, double radius) {
    const double away = std::hypot(electrode.east_m, electrode.north_m);
    const double margin = std::max({4 * building_half_m, 1.15 * radius, 0.3 * away});
    const double west = std::min(0.0, electrode.east_m) - margin;
    const double south = std::min(0.0, electrode.north_m) - margin;
    const double wide = std::max(0.0, electrode.east_m) + margin - west;
    const double high = std::max(0.0, electrode.north_m) + margin - south;
    SurfaceGrid grid;
    grid.origin = {west, south};
    const double step = std::max(wide, high) / static_cast<double>(longest_side - 1);
    grid.columns = static_cast<std::size_t>(std::ceil(wide / step - 1e-9)) + 1;
    grid.rows = static_cast<std::size_t>(std::ceil(high / step - 1e-9)) + 1;
    grid.step_east_m = wide / static_cast<double>(grid.columns - 1);
    grid.step_north_m = high / static_cast<double>(grid.rows - 1);
    for (std::size_t row = 0; row < grid.rows; ++row) {
        for (std::size_t column = 0; column < grid.columns; ++column) {
            const double x = west + grid.step_east_m * static_cast<double>(column);
            const double y = south + grid.step_north_m * static_cast<double>(row);
            grid.share.push_back(std::min(1.0, radius / std::max(std::hypot(x, y), 1e-9)));
        }
    }
    return grid;
}

/// Where the way from inside to outside leaves the grid.
GroundPoint leaving(const SurfaceGrid& grid, GroundPoint inside, GroundPoint outside) {
    double share = 1;
    const auto cut = [&](double from, double to, double low, double high) {
        if (to < low) share = std::min(share, (low - from) / (to - from));
        if (to > high) share = std::min(share, (high - from) / (to - from));
    };
    const GroundPoint low = grid.origin;
    const GroundPoint high{low.east_m + grid.east_m(), low.north_m + grid.north_m()};
    cut(inside.east_m, outside.east_m, low.east_m, high.east_m);
    cut(inside.north_m, outside.north_m, low.north_m, high.north_m);
    return {inside.east_m + share * (outside.east_m - inside.east_m),
            inside.north_m + share * (outside.north_m - inside.north_m)};
}

bool holds(const SurfaceGrid& grid, GroundPoint p) {
    return p.east_m >= grid.origin.east_m && p.north_m >= grid.origin.north_m &&
           p.east_m <= grid.origin.east_m + grid.east_m() &&
           p.north_m <= grid.origin.north_m + grid.north_m();
}

/// A circle round the origin as far as the grid reaches.
ContourLine circle(const SurfaceGrid& grid, double radius, double level) {
    std::vector<GroundPoint> round;
    std::size_t outside = circle_parts;
    for (int i = 0; i < circle_parts; ++i) {
        const double angle = 2 * pi * i / circle_parts;
        round.push_back({radius * std::cos(angle), radius * std::sin(angle)});
        if (!holds(grid, round.back())) outside = static_cast<std::size_t>(i);
    }
    ContourLine contour{level, {}};
    if (outside == circle_parts) {
        round.push_back(round.front());
        contour.lines.push_back(std::move(round));
        return contour;
    }
    std::vector<GroundPoint> run;
    for (std::size_t k = 1; k <= round.size(); ++k) {
        const GroundPoint before = round[(outside + k - 1) % round.size()];
        const GroundPoint p = round[(outside + k) % round.size()];
        const bool in = holds(grid, p);
        if (in && run.empty()) run.push_back(leaving(grid, p, before));
        if (in) run.push_back(p);
        if (in || run.empty()) continue;
        run.push_back(leaving(grid, before, p));
        contour.lines.push_back(std::move(run));
        run.clear();
    }
    return contour;
}

SurfaceThing square(ThingKind kind, GroundPoint middle, double half, std::string name) {
    return {kind,
            {{middle.east_m - half, middle.north_m - half},
             {middle.east_m + half, middle.north_m - half},
             {middle.east_m + half, middle.north_m + half},
             {middle.east_m - half, middle.north_m + half}},
            std::move(name)};
}

}  // namespace

SurfaceMap half_ball_map(const site::Job& job, const answer::GroundSideAnswer& side) {
    SurfaceMap map;
    const double radius = side.separation.house_radius_m;
    const double between = side.separation.distance_m;
    if (!length_known(radius) || !std::isfinite(between) || between < 0) return map;
    const GroundPoint far = electrode_place(job, side);
    map.grid = grid_round(far, radius);
    std::vector<double> levels = map_levels(job, side.lost_neutral);
    levels.push_back(1);
    for (const double level : levels) {
        ContourLine contour = circle(map.grid, radius / level, level);
        if (!contour.lines.empty()) map.contours.push_back(std::move(contour));
    }
    const double away = radius + between;
    map.things = {square(ThingKind::house, {0, 0}, std::min(house_half_m, 0.5 * away), "house"),
                  square(ThingKind::outbuilding, far, std::min(building_half_m, 0.35 * away),
                         building_words(job, side.building)),
                  {ThingKind::house_electrode, {{0, 0}}, "the house's earth"},
                  {ThingKind::outbuilding_electrode, {far}, "the outbuilding's electrode"}};
    map.basis = fmt::format(
        "The house's earth is taken as the half ball of {} radius that would have its resistance, "
        "in "
        "soil that is the same everywhere. The buildings' sizes are not surveyed.",
        metre_words(radius));
    return map;
}

}  // namespace toft::terrain
