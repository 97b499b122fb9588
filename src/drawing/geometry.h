#pragma once
// Points, vectors and boxes of the drawing plane: x to the right, y down, in user units.

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

namespace toft::drawing {

/// A place or a displacement, in user units.
struct Point {
    double x = 0;
    double y = 0;
    friend bool operator==(const Point&, const Point&) = default;
};

constexpr Point operator+(Point a, Point b) { return {a.x + b.x, a.y + b.y}; }
constexpr Point operator-(Point a, Point b) { return {a.x - b.x, a.y - b.y}; }
constexpr Point operator*(Point a, double k) { return {a.x * k, a.y * k}; }

constexpr double dot(Point a, Point b) { return a.x * b.x + a.y * b.y; }
/// Positive when `b` lies clockwise of `a` as seen on the page.
constexpr double cross(Point a, Point b) { return a.x * b.y - a.y * b.x; }
inline double length(Point v) { return std::hypot(v.x, v.y); }
inline double distance(Point a, Point b) { return length(b - a); }

/// The vector of length 1 along `v`; the zero vector when `v` has no length.
inline Point unit(Point v) {
    const double size = length(v);
    return size > 0 ? v * (1 / size) : Point{};
}

/// `v` turned a quarter clockwise on the page.
constexpr Point quarter_turned(Point v) { return {-v.y, v.x}; }

/// `v` turned clockwise on the page by `degrees`.
inline Point turned(Point v, double degrees) {
    const double angle = degrees * std::numbers::pi / 180;
    const double c = std::cos(angle);
    const double s = std::sin(angle);
    return {v.x * c - v.y * s, v.x * s + v.y * c};
}

/// The point at share `t` of the way from `a` (0) to `b` (1).
constexpr Point between(Point a, Point b, double t) { return a + (b - a) * t; }

/// A rectangle along the axes. The default is the box of nothing, which any point enlarges.
struct Box {
    double left = std::numeric_limits<double>::infinity();
    double top = std::numeric_limits<double>::infinity();
    double right = -std::numeric_limits<double>::infinity();
    double bottom = -std::numeric_limits<double>::infinity();

    /// True for the box of nothing; a box of a point or of a level line is not empty.
    constexpr bool empty() const { return left > right || top > bottom; }
    constexpr double width() const { return empty() ? 0 : right - left; }
    constexpr double height() const { return empty() ? 0 : bottom - top; }
    constexpr Point centre() const { return {(left + right) / 2, (top + bottom) / 2}; }
    friend bool operator==(const Box&, const Box&) = default;
};

/// The box of that size whose upper left corner is `corner`.
constexpr Box box_at(Point corner, double width, double height) {
    return {corner.x, corner.y, corner.x + width, corner.y + height};
}

/// The smallest box around both.
constexpr Box joined(const Box& a, const Box& b) {
    return {std::min(a.left, b.left), std::min(a.top, b.top), std::max(a.right, b.right),
            std::max(a.bottom, b.bottom)};
}

constexpr Box joined(const Box& a, Point p) { return joined(a, Box{p.x, p.y, p.x, p.y}); }

/// `box` with `margin` added on each side; the box of nothing stays so.
constexpr Box grown(const Box& box, double margin) {
    return {box.left - margin, box.top - margin, box.right + margin, box.bottom + margin};
}

constexpr Box moved(const Box& box, Point by) {
    return {box.left + by.x, box.top + by.y, box.right + by.x, box.bottom + by.y};
}

/// True when the insides share area; boxes that only touch do not overlap. Lengths under 1e-9 units
/// count as nothing.
constexpr bool overlap(const Box& a, const Box& b) {
    constexpr double nothing = 1e-9;
    return std::min(a.right, b.right) - std::max(a.left, b.left) > nothing &&
           std::min(a.bottom, b.bottom) - std::max(a.top, b.top) > nothing;
}

/// True when `inner` reaches nowhere outside `outer` by more than 1e-9 units.
constexpr bool contains(const Box& outer, const Box& inner) {
    constexpr double nothing = 1e-9;
    return inner.left >= outer.left - nothing && inner.right <= outer.right + nothing &&
           inner.top >= outer.top - nothing && inner.bottom <= outer.bottom + nothing;
}

/// The point of `box`, edge or inside, that is nearest to `p`.
constexpr Point nearest(const Box& box, Point p) {
    return {std::clamp(p.x, box.left, box.right), std::clamp(p.y, box.top, box.bottom)};
}

}  // namespace toft::drawing
