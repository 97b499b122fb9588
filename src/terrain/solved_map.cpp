#include "terrain/solved_map.h"

namespace toft::terrain {

namespace {

GroundPoint point_of(const field::Spot& spot) { return {spot.east.number(), spot.north.number()}; }

std::vector<GroundPoint> line_of(const field::Contour& contour) {
    std::vector<GroundPoint> line;
    for (const field::Spot& spot : contour.places) line.push_back(point_of(spot));
    if (contour.closed && !line.empty() && !(line.front() == line.back())) {
        line.push_back(line.front());
    }
    return line;
}

SurfaceGrid grid_of(const field::SurfaceMap& solved, Volts rise) {
    SurfaceGrid grid;
    grid.origin = point_of(solved.area.corner);
    grid.columns = static_cast<std::size_t>(solved.area.columns);
    grid.rows = static_cast<std::size_t>(solved.area.rows);
    grid.step_east_m = solved.area.east.number() / (solved.area.columns - 1);
    grid.step_north_m = solved.area.north.number() / (solved.area.rows - 1);
    for (const Volts volts : solved.potential) grid.share.push_back(volts / rise);
    return grid;
}

}  // namespace

SurfaceMap solved_map(const field::SurfaceMap& solved, Volts rise,
                      const std::vector<double>& levels) {
    SurfaceMap map;
    if (!(rise > volts(0)) || solved.area.columns < 2 || solved.area.rows < 2) return map;
    map.grid = grid_of(solved, rise);
    for (const double level : levels) {
        ContourLine contour{level, {}};
        for (const field::Contour& one : field::contours(solved, {rise * level})) {
            contour.lines.push_back(line_of(one));
        }
        if (!contour.lines.empty()) map.contours.push_back(std::move(contour));
    }
    return map;
}

}  // namespace toft::terrain
