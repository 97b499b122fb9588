#include "drawing/hatch.h"

namespace toft::drawing {

namespace {

/// Where the level line at `y` crosses the outline, from left to right.
std::vector<double> crossings(const std::vector<Point>& outline, double y) {
    std::vector<double> xs;
    for (std::size_t i = 0; i < outline.size(); ++i) {
        const Point a = outline[i];
        const Point b = outline[(i + 1) % outline.size()];
        if ((a.y <= y) != (b.y <= y)) xs.push_back(a.x + (b.x - a.x) * (y - a.y) / (b.y - a.y));
    }
    std::sort(xs.begin(), xs.end());
    return xs;
}

constexpr double most_lines = 20000;
constexpr double group_spacing = 26;
constexpr double stroke_spacing = 5;
constexpr double longest_stroke = 9;

}  // namespace

Items hatched(const std::vector<Point>& outline, const Hatch& hatch) {
    Items items;
    std::vector<Point> level;
    Box box;
    for (const Point p : outline) {
        level.push_back(turned(p, -hatch.angle));
        box = joined(box, level.back());
    }
    if (box.empty() || !(hatch.spacing > 0) || !(box.height() / hatch.spacing < most_lines)) {
        return items;
    }
    const auto first = static_cast<long>(std::ceil(box.top / hatch.spacing));
    const auto last = static_cast<long>(std::floor(box.bottom / hatch.spacing));
    for (long row = first; row <= last; ++row) {
        const double y = static_cast<double>(row) * hatch.spacing;
        const std::vector<double> xs = crossings(level, y);
        for (std::size_t i = 0; i + 1 < xs.size(); i += 2) {
            if (xs[i + 1] - xs[i] < 1e-6) continue;
            items.push_back(Line{turned({xs[i], y}, hatch.angle),
                                 turned({xs[i + 1], y}, hatch.angle), hatch.style});
        }
    }
    return items;
}

Items hatched(const Box& box, const Hatch& hatch) {
    if (box.empty()) return {};
    return hatched(std::vector<Point>{{box.left, box.top},
                                      {box.right, box.top},
                                      {box.right, box.bottom},
                                      {box.left, box.bottom}},
                   hatch);
}

Items ground_strokes(const std::vector<Point>& line, const Style& style) {
    Items items;
    double due = stroke_spacing;  // along the line, from the start of the present leg
    for (std::size_t i = 0; i + 1 < line.size(); ++i) {
        const double leg = distance(line[i], line[i + 1]);
        if (!(leg / group_spacing < most_lines)) return {};
        const Point along = unit(line[i + 1] - line[i]);
        const Point lean = unit(quarter_turned(along) - along);
        for (; due < leg; due += group_spacing) {
            for (int k = 0; k < 3; ++k) {
                const double place = due + k * stroke_spacing;
                if (place > leg) break;
                const Point foot = line[i] + along * place;
                items.push_back(Line{foot, foot + lean * (longest_stroke * (1 - 0.25 * k)), style});
            }
        }
        due -= leg;
    }
    return items;
}

}  // namespace toft::drawing
