#include "terrain/half_ball_map.h"

#include "base/pi.h"
#include "terrain/figures.h"
#include "terrain/sheet.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <limits>
#include <utility>

namespace toft::terrain {

namespace {

constexpr std::size_t longest_side = 90;  // of the grid, figures
constexpr double fewest_parts = 96;       // of a circle
constexpr double most_parts = 50000;

constexpr double house_half_m = 2.5;  // drawn: the house's size is not surveyed
constexpr double building_half_m = 1.5;

double distance(GroundPoint a, GroundPoint b) {
    return std::hypot(b.east_m - a.east_m, b.north_m - a.north_m);
}

/// House at the origin, the outbuilding's electrode where the survey has the building, else to the
/// east; from there to the house the nearest metal and beyond it the half ball's centre.
struct Places {
    GroundPoint electrode;
    GroundPoint metal;
    GroundPoint centre;
    double radius = 0;
};

Places places_of(const site::Job& job, const answer::GroundSideAnswer& side) {
    Places places;
    places.radius = side.separation.house_radius_m;
    const double between = side.separation.distance_m;
    places.electrode = {between + std::min(places.radius, house_half_m), 0};
    const site::Building* building = site::find_building(job, side.building);
    if (building && building->at_x_m && building->at_y_m) {
        const GroundPoint stated{*building->at_x_m, *building->at_y_m};
        if (length_known(distance({}, stated))) places.electrode = stated;
    }
    const GroundPoint from = places.electrode;
    const double away = distance({}, from);
    const auto towards_house = [&](double metres) {
        const double share = 1 - metres / away;
        return GroundPoint{from.east_m * share, from.north_m * share};
    };
    places.metal = towards_house(between);
    places.centre = towards_house(between + places.radius);
    return places;
}

/// Round house, electrode and the nearest metal.
SurfaceGrid grid_round(const Places& places) {
    const double away = distance({}, places.electrode);
    const double margin = std::max(4 * building_half_m, 0.35 * away);
    const auto [west, east] = std::minmax({0.0, places.electrode.east_m, places.metal.east_m});
    const auto [south, north] = std::minmax({0.0, places.electrode.north_m, places.metal.north_m});
    const double wide = east - west + 2 * margin;
    const double high = north - south + 2 * margin;
    SurfaceGrid grid;
    grid.origin = {west - margin, south - margin};
    const double step = std::max(wide, high) / static_cast<double>(longest_side - 1);
    grid.columns = static_cast<std::size_t>(std::ceil(wide / step - 1e-9)) + 1;
    grid.rows = static_cast<std::size_t>(std::ceil(high / step - 1e-9)) + 1;
    grid.step_east_m = wide / static_cast<double>(grid.columns - 1);
    grid.step_north_m = high / static_cast<double>(grid.rows - 1);
    for (std::size_t row = 0; row < grid.rows; ++row) {
        for (std::size_t column = 0; column < grid.columns; ++column) {
            const GroundPoint p{grid.origin.east_m + grid.step_east_m * static_cast<double>(column),
                                grid.origin.north_m + grid.step_north_m * static_cast<double>(row)};
            const double from_centre = std::max(distance(places.centre, p), 1e-9);
            grid.share.push_back(std::min(1.0, places.radius / from_centre));
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

/// The circle of that level as far as the grid reaches, in parts no longer than its steps.
ContourLine circle(const SurfaceGrid& grid, const Places& places, double level) {
    const double radius = places.radius / level;
    const double step = std::min(grid.step_east_m, grid.step_north_m);
    const auto parts =
        static_cast<std::size_t>(std::clamp(2 * pi * radius / step, fewest_parts, most_parts));
    std::vector<GroundPoint> round;
    std::size_t outside = parts;
    for (std::size_t i = 0; i < parts; ++i) {
        const double angle = 2 * pi * static_cast<double>(i) / static_cast<double>(parts);
        round.push_back({places.centre.east_m + radius * std::cos(angle),
                         places.centre.north_m + radius * std::sin(angle)});
        if (!holds(grid, round.back())) outside = i;
    }
    ContourLine contour{level, {}};
    if (outside == parts) {
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

/// Lines far enough apart to be read; those of volts are always drawn.
std::vector<double> readable_levels(const site::Job& job, const answer::LostNeutralAnswer& fault,
                                    const SurfaceMap& map, double radius) {
    const double apart = 0.02 * std::max(map.grid.east_m(), map.grid.north_m());
    std::vector<double> levels = map_levels(job, fault);
    levels.push_back(1);
    std::vector<double> kept;
    double before = std::numeric_limits<double>::infinity();
    for (const double level : levels) {
        const bool volts = mark_at(job, fault, level).has_value();
        if (!volts && level < 1 && before - radius / level < apart) continue;
        kept.push_back(level);
        if (!volts) before = radius / level;
    }
    return kept;
}

std::vector<SurfaceThing> things_of(const site::Job& job, const answer::GroundSideAnswer& side,
                                    const Places& places) {
    const double away = distance({}, places.electrode);
    return {square(ThingKind::house, {}, std::min(house_half_m, 0.45 * away), "house"),
            square(ThingKind::outbuilding, places.electrode, std::min(building_half_m, 0.3 * away),
                   building_words(job, side.building)),
            {ThingKind::house_electrode, {places.metal}, "nearest metal on the house's earth"},
            {ThingKind::outbuilding_electrode, {places.electrode}, "the outbuilding's electrode"}};
}

}  // namespace

SurfaceMap half_ball_map(const site::Job& job, const answer::GroundSideAnswer& side) {
    SurfaceMap map;
    const double radius = side.separation.house_radius_m;
    const double between = side.separation.distance_m;
    if (!length_known(radius) || !std::isfinite(between) || between < 0) return map;
    const Places places = places_of(job, side);
    map.grid = grid_round(places);
    for (const double level : readable_levels(job, side.lost_neutral, map, radius)) {
        ContourLine contour = circle(map.grid, places, level);
        if (!contour.lines.empty()) map.contours.push_back(std::move(contour));
    }
    map.things = things_of(job, side, places);
    map.basis = fmt::format(
        "Drawn at its worst: the house's earth with all that it joins as the half ball of {} "
        "radius that would have its least resistance in the worst soil the survey allows. Its edge "
        "(100 %) is the nearest metal on that earth. The buildings' sizes are not surveyed.",
        metre_words(radius));
    return map;
}

}  // namespace toft::terrain
