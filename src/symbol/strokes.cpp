#include "symbol/strokes.h"

#include <string>

namespace toft::symbol {

namespace {

constexpr double step = 11;
constexpr double half_wide = 8.5;
constexpr double half_rise = 4;

Items stroke(const Axis& axis, Core core, const Style& pen) {
    const Point low = axis.point(half_rise, -half_wide);
    const Point high = axis.point(-half_rise, half_wide);
    Items items{Line{low, high, pen}};
    if (core == Core::neutral || core == Core::pen) {
        items.emplace_back(Circle{high, 2.6, solid(pen)});
    }
    if (core == Core::protective || core == Core::pen) {
        const Point bar = quarter_turned(unit(high - low)) * 4;
        const Point at = core == Core::pen ? between(low, high, 0.8) : high;
        items.emplace_back(Line{at - bar, at + bar, pen});
    }
    return items;
}

const char* kind_of(Core core) {
    switch (core) {
        case Core::line:
            return "stroke stroke-line";
        case Core::neutral:
            return "stroke stroke-neutral";
        case Core::protective:
            return "stroke stroke-protective";
        case Core::pen:
            break;
    }
    return "stroke stroke-pen";
}

}  // namespace

double strokes_length(std::size_t count) { return step * static_cast<double>(count) + 6; }

Items strokes(const Axis& axis, const std::vector<Core>& cores, const Style& pen) {
    Items items;
    const Style thin = stroked(*pen.stroke, 1.4);
    const double first = -step * (static_cast<double>(cores.size()) - 1) / 2;
    for (std::size_t i = 0; i < cores.size(); ++i) {
        const Axis at = axis.moved(first + step * static_cast<double>(i));
        items.emplace_back(Group{stroke(at, cores[i], thin), {}, "", kind_of(cores[i]), ""});
    }
    TextStyle figure{.size = 10, .anchor = Anchor::end};
    items.emplace_back(
        text(axis.point(0, -half_wide - 5) + Point{0, 3.6}, std::to_string(cores.size()), figure));
    return items;
}

}  // namespace toft::symbol
