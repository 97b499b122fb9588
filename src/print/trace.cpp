#include "print/trace.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace toft::print {

namespace {

using drawing::Point;

constexpr double largest_coordinate = 1e7;
constexpr double quarter = std::numbers::pi / 2;

/// Follows the steps of a path.
class Tracer {
public:
    explicit Tracer(cairo_t* pen) : pen_(pen) {}

    void operator()(const drawing::MoveTo& step) {
        if (good({step.to})) cairo_move_to(pen_, step.to.x, step.to.y);
    }
    void operator()(const drawing::LineTo& step) {
        if (good({step.to})) cairo_line_to(pen_, step.to.x, step.to.y);
    }
    void operator()(const drawing::QuadTo& step) {
        if (!good({step.control, step.to})) return;
        const Point first = drawing::between(here(), step.control, 2.0 / 3);
        const Point second = drawing::between(step.to, step.control, 2.0 / 3);
        cairo_curve_to(pen_, first.x, first.y, second.x, second.y, step.to.x, step.to.y);
    }
    void operator()(const drawing::CubicTo& step) {
        if (!good({step.first, step.second, step.to})) return;
        cairo_curve_to(pen_, step.first.x, step.first.y, step.second.x, step.second.y, step.to.x,
                       step.to.y);
    }
    void operator()(const drawing::ArcTo& step) {
        if (good({step.to, {step.radius, 0}})) arc(step);
    }
    void operator()(const drawing::Close&) { cairo_close_path(pen_); }

    bool all_good() const { return good_; }

private:
    bool good(std::initializer_list<Point> points) {
        good_ = good_ && std::all_of(points.begin(), points.end(), sound);
        return good_;
    }
    Point here() const {
        Point p;
        cairo_get_current_point(pen_, &p.x, &p.y);
        return p;
    }
    void arc(const drawing::ArcTo& step) {
        const Point from = here();
        if (from == step.to) return;
        if (!(step.radius > 0)) return cairo_line_to(pen_, step.to.x, step.to.y);
        const Point chord = step.to - from;
        const double half = drawing::length(chord) / 2;
        const double radius = std::max(step.radius, half);
        const double rise = std::sqrt(std::max(0.0, radius * radius - half * half));
        const double side = step.sweep.clockwise == step.sweep.large ? -1 : 1;
        const Point centre = drawing::between(from, step.to, 0.5) +
                             drawing::quarter_turned(drawing::unit(chord)) * (side * rise);
        const Point a = from - centre;
        const Point b = step.to - centre;
        const auto draw = step.sweep.clockwise ? cairo_arc : cairo_arc_negative;
        draw(pen_, centre.x, centre.y, radius, std::atan2(a.y, a.x), std::atan2(b.y, b.x));
    }

    cairo_t* pen_;
    bool good_ = true;
};

bool corners(cairo_t* pen, const std::vector<Point>& points) {
    if (!std::all_of(points.begin(), points.end(), sound)) return false;
    cairo_new_sub_path(pen);
    for (const Point p : points) cairo_line_to(pen, p.x, p.y);
    return true;
}

}  // namespace

bool sound(Point p) {
    return std::fabs(p.x) <= largest_coordinate && std::fabs(p.y) <= largest_coordinate;
}

bool trace(cairo_t* pen, const drawing::Line& line) { return corners(pen, {line.from, line.to}); }

bool trace(cairo_t* pen, const drawing::Polyline& line) { return corners(pen, line.points); }

bool trace(cairo_t* pen, const drawing::Polygon& area) {
    if (!corners(pen, area.points)) return false;
    if (!area.points.empty()) cairo_close_path(pen);
    return true;
}

bool trace(cairo_t* pen, const drawing::Rect& rect) {
    const drawing::Box& box = rect.box;
    if (box.empty() || !sound({box.left, box.top}) || !sound({box.right, box.bottom})) return false;
    const double r = std::min({rect.corner, box.width() / 2, box.height() / 2});
    if (!(r > 0)) {
        cairo_rectangle(pen, box.left, box.top, box.width(), box.height());
        return true;
    }
    cairo_new_sub_path(pen);
    cairo_arc(pen, box.right - r, box.top + r, r, -quarter, 0);
    cairo_arc(pen, box.right - r, box.bottom - r, r, 0, quarter);
    cairo_arc(pen, box.left + r, box.bottom - r, r, quarter, 2 * quarter);
    cairo_arc(pen, box.left + r, box.top + r, r, 2 * quarter, 3 * quarter);
    cairo_close_path(pen);
    return true;
}

bool trace(cairo_t* pen, const drawing::Circle& circle) {
    if (!sound(circle.centre) || !sound({circle.radius, 0})) return false;
    cairo_new_sub_path(pen);
    cairo_arc(pen, circle.centre.x, circle.centre.y, circle.radius, 0, 4 * quarter);
    cairo_close_path(pen);
    return true;
}

bool trace(cairo_t* pen, const drawing::Path& path) {
    Tracer tracer(pen);
    for (const drawing::Step& step : path.steps) std::visit(tracer, step);
    return tracer.all_good();
}

}  // namespace toft::print
