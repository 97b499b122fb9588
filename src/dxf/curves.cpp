#include "dxf/curves.h"

#include "base/pi.h"

#include <algorithm>
#include <cmath>

namespace toft::dxf {

namespace {

using namespace drawing;

/// Middle of the arc's circle, y downwards.
Point arc_centre(Point from, const ArcTo& arc, double radius) {
    const Point chord = arc.to - from;
    const double half = length(chord) / 2;
    const double rise = std::sqrt(std::max(0.0, radius * radius - half * half));
    const double side = arc.sweep.clockwise == arc.sweep.large ? -1 : 1;
    return between(from, arc.to, 0.5) + quarter_turned(unit(chord)) * (side * rise);
}

class Flattener {
public:
    explicit Flattener(int pieces) : pieces_(pieces) {}

    void operator()(const MoveTo& step) { strokes_.push_back({{step.to}, false}); }
    void operator()(const LineTo& step) { add(step.to); }
    void operator()(const QuadTo& step) {
        const Point a = pen();
        along([&](double t) {
            return between(between(a, step.control, t), between(step.control, step.to, t), t);
        });
    }
    void operator()(const CubicTo& step) {
        const Point a = pen();
        along([&](double t) {
            const Point ab = between(a, step.first, t);
            const Point bc = between(step.first, step.second, t);
            const Point cd = between(step.second, step.to, t);
            return between(between(ab, bc, t), between(bc, cd, t), t);
        });
    }
    void operator()(const ArcTo& step) {
        const Point a = pen();
        if (a == step.to || !(step.radius > 0)) return add(step.to);
        const double radius = std::max(step.radius, distance(a, step.to) / 2);
        const Point centre = arc_centre(a, step, radius);
        const double begin = std::atan2(a.y - centre.y, a.x - centre.x);
        double turn = std::atan2(step.to.y - centre.y, step.to.x - centre.x) - begin;
        if (step.sweep.clockwise && turn < 0) turn += 2 * pi;
        if (!step.sweep.clockwise && turn > 0) turn -= 2 * pi;
        along([&](double t) {
            const double at = begin + t * turn;
            return centre + Point{std::cos(at), std::sin(at)} * radius;
        });
    }
    void operator()(const Close&) {
        if (!strokes_.empty()) strokes_.back().closed = true;
    }

    std::vector<Stroke> take() { return std::move(strokes_); }

private:
    Point pen() const { return strokes_.back().points.back(); }

    void add(Point p) {
        if (strokes_.back().closed) strokes_.push_back({{strokes_.back().points.front()}, false});
        strokes_.back().points.push_back(p);
    }

    template <class At>
    void along(At at) {
        for (int i = 1; i <= pieces_; ++i) add(at(static_cast<double>(i) / pieces_));
    }

    int pieces_;
    std::vector<Stroke> strokes_;
};

}  // namespace

std::vector<Stroke> strokes_of(const drawing::Path& path, int pieces) {
    Flattener flat(pieces);
    for (const Step& step : path.steps) std::visit(flat, step);
    return flat.take();
}

}  // namespace toft::dxf
