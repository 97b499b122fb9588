#include "field/surface_map.h"

#include <algorithm>
#include <cmath>

namespace toft::field {

namespace {

constexpr int most_places = 1000;
constexpr std::size_t none = static_cast<std::size_t>(-1);

/// Lines of one level. Every side of the grid that a line crosses has a number; `next` says over
/// which side the line goes on.
class Tracing {
public:
    Tracing(const SurfaceMap& map, Volts level);

    void trace(std::vector<Contour>& contours);

private:
    std::size_t columns() const { return static_cast<std::size_t>(map_.area.columns); }
    std::size_t flat(int column, int row) const {
        return 2 * (static_cast<std::size_t>(row) * columns() + static_cast<std::size_t>(column));
    }
    std::size_t upright(int column, int row) const { return flat(column, row) + 1; }
    bool high(int column, int row) const { return map_.at(column, row) >= level_; }

    void cross(int column, int row);
    void join(std::size_t from, std::size_t to) {
        next_[from] = to;
        entered_[to] = true;
    }
    Spot place_on(std::size_t side) const;
    void follow(std::size_t side, std::vector<Contour>& contours);

    const SurfaceMap& map_;
    Volts level_;
    std::vector<std::size_t> next_;
    std::vector<bool> entered_;
};

Tracing::Tracing(const SurfaceMap& map, Volts level)
    : map_(map),
      level_(level),
      next_(2 * map.potential.size(), none),
      entered_(2 * map.potential.size(), false) {
    for (int row = 0; row + 1 < map.area.rows; ++row) {
        for (int column = 0; column + 1 < map.area.columns; ++column) cross(column, row);
    }
}

/// Joins the sides of one square that the line enters and leaves by, high ground on the left: it
/// enters over a side whose corners, going round against the clock, are high then low.
void Tracing::cross(int column, int row) {
    const std::size_t sides[4] = {flat(column, row), upright(column + 1, row),
                                  flat(column, row + 1), upright(column, row)};
    const bool corners[4] = {high(column, row), high(column + 1, row), high(column + 1, row + 1),
                             high(column, row + 1)};
    int enters[2];
    int leaves[2];
    int count = 0;
    int left = 0;
    for (int i = 0; i < 4; ++i) {
        const bool here = corners[i];
        const bool there = corners[(i + 1) % 4];
        if (!here && there) leaves[left++] = i;
        if (here && !there) enters[count++] = i;
    }
    if (count == 0) return;
    if (count == 1) return join(sides[enters[0]], sides[leaves[0]]);
    const Volts mean = (map_.at(column, row) + map_.at(column + 1, row) + map_.at(column, row + 1) +
                        map_.at(column + 1, row + 1)) /
                       4;
    // High ground through the middle: each line cuts off the low corner after the side it enters.
    const int turn = mean >= level_ ? 1 : 3;
    for (int enter : enters) join(sides[enter], sides[(enter + turn) % 4]);
}

Spot Tracing::place_on(std::size_t side) const {
    const auto number = static_cast<int>(side / 2);
    const int column = number % map_.area.columns;
    const int row = number / map_.area.columns;
    const bool up = side % 2 == 1;
    const int other_column = up ? column : column + 1;
    const int other_row = up ? row + 1 : row;
    const Volts here = map_.at(column, row);
    const double share = (level_ - here) / (map_.at(other_column, other_row) - here);
    const Spot a = map_.place(column, row);
    const Spot b = map_.place(other_column, other_row);
    return {a.east + (b.east - a.east) * share, a.north + (b.north - a.north) * share, metres(0)};
}

void Tracing::follow(std::size_t side, std::vector<Contour>& contours) {
    Contour contour{level_, {place_on(side)}, false};
    const std::size_t first = side;
    while (next_[side] != none) {
        const std::size_t to = next_[side];
        next_[side] = none;
        contour.places.push_back(place_on(to));
        side = to;
    }
    contour.closed = side == first;
    contours.push_back(std::move(contour));
}

void Tracing::trace(std::vector<Contour>& contours) {
    for (std::size_t side = 0; side < next_.size(); ++side) {
        if (next_[side] != none && !entered_[side]) follow(side, contours);
    }
    for (std::size_t side = 0; side < next_.size(); ++side) {
        if (next_[side] != none) follow(side, contours);
    }
}

bool has_length(Metres side) { return side > metres(0) && std::isfinite(side.number()); }

}  // namespace

Outcome<SurfaceMap> map_surface(const Driven& driven, const MapArea& area) {
    Faults faults;
    if (!has_length(area.east) || !has_length(area.north)) {
        faults.push_back({"area", "", "a map needs sides above 0", "", {}});
    }
    const int fewest = std::min(area.columns, area.rows);
    if (fewest < 2 || std::max(area.columns, area.rows) > most_places) {
        faults.push_back({"area", "", "a map has 2 to 1000 places either way", "", {}});
    }
    if (!faults.empty()) return failed(std::move(faults));
    SurfaceMap map{area, {}};
    map.potential.reserve(static_cast<std::size_t>(area.columns) *
                          static_cast<std::size_t>(area.rows));
    for (int row = 0; row < area.rows; ++row) {
        for (int column = 0; column < area.columns; ++column) {
            map.potential.push_back(driven.potential(map.place(column, row)));
        }
    }
    return map;
}

std::vector<Contour> contours(const SurfaceMap& map, const std::vector<Volts>& levels) {
    std::vector<Contour> all;
    for (Volts level : levels) Tracing(map, level).trace(all);
    return all;
}

}  // namespace toft::field
