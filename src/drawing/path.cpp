#include "drawing/path.h"

#include <array>

namespace toft::drawing {

namespace {

/// Angle of `v` in radians from 0 to 2π, clockwise on the page.
double bearing(Point v) {
    const double angle = std::atan2(v.y, v.x);
    return angle < 0 ? angle + 2 * std::numbers::pi : angle;
}

Point centre_of(Point from, const ArcTo& arc, double radius) {
    const Point chord = arc.to - from;
    const double half = length(chord) / 2;
    const double rise = std::sqrt(std::max(0.0, radius * radius - half * half));
    const double side = arc.sweep.clockwise == arc.sweep.large ? -1 : 1;
    return between(from, arc.to, 0.5) + quarter_turned(unit(chord)) * (side * rise);
}

Box box_of_arc(Point from, const ArcTo& arc) {
    Box box = joined(joined(Box{}, from), arc.to);
    if (from == arc.to || !(arc.radius > 0)) return box;
    const double radius = std::max(arc.radius, distance(from, arc.to) / 2);
    const Point centre = centre_of(from, arc, radius);
    const double full = 2 * std::numbers::pi;
    const Point begin = arc.sweep.clockwise ? from : arc.to;
    const Point end = arc.sweep.clockwise ? arc.to : from;
    const double start = bearing(begin - centre);
    const double span = std::fmod(bearing(end - centre) - start + full, full);
    constexpr std::array<Point, 4> compass = {{{1, 0}, {0, 1}, {-1, 0}, {0, -1}}};
    for (const Point way : compass) {
        if (std::fmod(bearing(way) - start + full, full) <= span) {
            box = joined(box, centre + way * radius);
        }
    }
    return box;
}

/// Follows the pen and gathers the box.
struct Tracer {
    Box box = {};
    Point pen = {};
    Point start = {};

    void go(Point to) {
        box = joined(box, to);
        pen = to;
    }
    void operator()(const MoveTo& step) {
        go(step.to);
        start = step.to;
    }
    void operator()(const LineTo& step) { go(step.to); }
    void operator()(const QuadTo& step) {
        box = joined(box, step.control);
        go(step.to);
    }
    void operator()(const CubicTo& step) {
        box = joined(joined(box, step.first), step.second);
        go(step.to);
    }
    void operator()(const ArcTo& step) {
        box = joined(box, box_of_arc(pen, step));
        pen = step.to;
    }
    void operator()(const Close&) { pen = start; }
};

}  // namespace

Box box_of_line(const Path& path) {
    Tracer tracer;
    for (const Step& step : path.steps) std::visit(tracer, step);
    return tracer.box;
}

}  // namespace toft::drawing
