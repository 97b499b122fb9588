#include "soil/confidence.h"

#include <cmath>

namespace toft::soil {

namespace {

constexpr double first_step = 0.05;  ///< in ln
constexpr double width = 0.01;       ///< in ln, to which an end is found
constexpr int rounds = 12;           ///< of steps towards the best of the others
constexpr double wider = 1.5;        ///< in ln, by how much a box is widened to see what it stops
constexpr double well_beyond = 0.4;  ///< in ln

/// The best of the others with one figure held.
Settled held_at(const Taken& taken, Box box, LogSoil start, std::size_t figure, double x) {
    box.low[figure] = box.high[figure] = start[figure] = x;
    return settle(taken, box, start, rounds);
}

/// True when a wider box for the others would let the figure go well beyond its end.
bool stopped_by_box(const Taken& taken, Box box, const Outermost& found, const Outwards& way) {
    bool some_stand_at_an_end = false;
    for (std::size_t f = 0; f < found.soil.size(); ++f) {
        const double x = found.soil[f];
        if (f == way.figure || box.low[f] >= box.high[f]) continue;
        if (x > box.low[f] && x < box.high[f]) continue;
        some_stand_at_an_end = true;
        (x > box.low[f] ? box.high[f] : box.low[f]) += (x > box.low[f] ? 1 : -1) * wider;
    }
    if (!some_stand_at_an_end) return false;
    const double beyond = found.end + (way.up ? 1 : -1) * well_beyond;
    return held_at(taken, box, found.soil, way.figure, beyond).sum <= way.limit;
}

}  // namespace

Outermost outermost(const Taken& taken, const Box& box, const LogSoil& start, const Outwards& way) {
    const double bound = way.up ? box.high[way.figure] : box.low[way.figure];
    const double sign = way.up ? 1 : -1;
    Outermost found{start, start[way.figure], false};
    double inside = start[way.figure];
    double outside = bound;
    double step = first_step;
    bool crossed = false;
    while (!crossed || std::fabs(outside - inside) > width) {
        double x = crossed ? (inside + outside) / 2 : inside + sign * step;
        if (!crossed && sign * (x - bound) >= 0) x = bound;
        const Settled there = held_at(taken, box, found.soil, way.figure, x);
        if (there.sum <= way.limit) {
            found.soil = there.soil;
            inside = x;
            step *= 2;
            if (x == bound) return {found.soil, bound, true};
        } else {
            outside = x;
            crossed = true;
        }
    }
    found.end = outside;
    found.open = stopped_by_box(taken, box, found, way);
    return found;
}

}  // namespace toft::soil
