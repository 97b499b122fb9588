#pragma once
// What a map of the surface is drawn from: potentials on a grid, lines of equal potential, and the
// things that stand there. Places are metres to the east and north of any one point; potentials are
// shares of the house earth's rise, 0 to 1.

#include "groundwork/ground.h"
#include "site/job.h"

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

namespace toft::terrain {

struct GroundPoint {
    double east_m = 0;
    double north_m = 0;
    friend bool operator==(const GroundPoint&, const GroundPoint&) = default;
};

/// Potentials of a rectangle of the surface: rows from the south to the north, each from the west
/// to the east.
struct SurfaceGrid {
    GroundPoint origin = {};  ///< of the first figure, the south-west corner
    double step_east_m = 1;   ///< between neighbours
    double step_north_m = 1;
    std::size_t columns = 0;
    std::size_t rows = 0;
    std::vector<double> share = {};

    double east_m() const { return step_east_m * static_cast<double>(columns - 1); }
    double north_m() const { return step_north_m * static_cast<double>(rows - 1); }
};

/// True for a grid of at least two by two finite figures and steps above 0.
bool drawable(const SurfaceGrid& grid);

/// The figure at any place, evenly between those round it; places outside count as the nearest
/// inside. Precondition: drawable(grid).
double share_at(const SurfaceGrid& grid, GroundPoint place);

/// All lines of one level inside the grid. A line is closed (ends where it began) or ends on the
/// grid's edge.
struct ContourLine {
    double level = 0;
    std::vector<std::vector<GroundPoint>> lines = {};
};

enum class ThingKind { house, outbuilding, house_electrode, outbuilding_electrode };

/// Something that stands there: an outline, or one point for an electrode.
struct SurfaceThing {
    ThingKind kind = ThingKind::house;
    std::vector<GroundPoint> outline = {};
    std::string name = {};
};

struct SurfaceMap {
    SurfaceGrid grid = {};
    std::vector<ContourLine> contours = {};
    std::vector<SurfaceThing> things = {};
    std::string basis = {};      ///< what the potentials rest on, a sentence
    bool compass_known = false;  ///< "north" is that of a compass, not only the drawing's upwards
};

/// The levels a map is drawn with: 1, 2, 5, 10, 20, 50, 70, 80 and 90 %, and where each of the
/// answer's marks in volts would lie if the house's earth rose by the supply's voltage. In order,
/// none twice.
std::vector<double> map_levels(const site::Job& job, const answer::LostNeutralAnswer& fault);

/// The volts that `level` stands for when it is that of one of the marks.
std::optional<double> mark_at(const site::Job& job, const answer::LostNeutralAnswer& fault,
                              double level);

}  // namespace toft::terrain
