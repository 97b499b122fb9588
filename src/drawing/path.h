#pragma once
// A path built step by step: pen moved, lines, curves, arcs of circles, closing.

#include "drawing/geometry.h"
#include "drawing/style.h"

#include <variant>
#include <vector>

namespace toft::drawing {

/// Which of the four arcs of a circle between two points.
struct Sweep {
    bool clockwise = true;
    bool large = false;  ///< more than half the circle
    friend bool operator==(const Sweep&, const Sweep&) = default;
};

struct MoveTo {
    Point to;
    friend bool operator==(const MoveTo&, const MoveTo&) = default;
};
struct LineTo {
    Point to;
    friend bool operator==(const LineTo&, const LineTo&) = default;
};
struct QuadTo {
    Point control;
    Point to;
    friend bool operator==(const QuadTo&, const QuadTo&) = default;
};
struct CubicTo {
    Point first;
    Point second;
    Point to;
    friend bool operator==(const CubicTo&, const CubicTo&) = default;
};
struct ArcTo {
    double radius = 0;  ///< enlarged to half the distance when too small to reach
    Sweep sweep = {};
    Point to;
    friend bool operator==(const ArcTo&, const ArcTo&) = default;
};
struct Close {
    friend bool operator==(const Close&, const Close&) = default;
};

using Step = std::variant<MoveTo, LineTo, QuadTo, CubicTo, ArcTo, Close>;

/// Steps after one another; the first must move.
struct Path {
    std::vector<Step> steps = {};
    Style style = {};
    friend bool operator==(const Path&, const Path&) = default;
};

/// Builds a path from left to right: `PathBuilder(a).line(b).quad(c, d).close().inked(style)`.
class PathBuilder {
public:
    explicit PathBuilder(Point start) : steps_{MoveTo{start}} {}

    PathBuilder& move(Point to) { return add(MoveTo{to}); }
    PathBuilder& line(Point to) { return add(LineTo{to}); }
    PathBuilder& quad(Point control, Point to) { return add(QuadTo{control, to}); }
    PathBuilder& cubic(Point first, Point second, Point to) {
        return add(CubicTo{first, second, to});
    }
    PathBuilder& arc(double radius, Point to, Sweep sweep = {}) {
        return add(ArcTo{radius, sweep, to});
    }
    PathBuilder& close() { return add(Close{}); }

    Path inked(Style style) const { return {steps_, std::move(style)}; }

private:
    PathBuilder& add(Step step) {
        steps_.push_back(step);
        return *this;
    }

    std::vector<Step> steps_;
};

/// A box around the path's line without its width: exact for lines and arcs, and for curves the box
/// of their control points, which may be larger than the curve.
Box box_of_line(const Path& path);

}  // namespace toft::drawing
