#include "digging/signs.h"

#include "digging/ink.h"
#include "drawing/hatch.h"

#include <algorithm>

namespace toft::digging {

namespace {

struct Pattern {
    std::vector<Hatch> hatches;
};

/// A pattern of its own for each surface, told apart without colour.
Pattern pattern_of(site::Surface surface) {
    const Style hair = stroked(palette::pencil, weight::hair);
    const auto lines = [&](double angle, double spacing) {
        return Hatch{.angle = angle, .spacing = spacing, .style = hair};
    };
    switch (surface) {
        case site::Surface::lawn:
            return {{lines(-60, 6)}};
        case site::Surface::bed:
            return {{lines(-60, 6), lines(60, 6)}};
        case site::Surface::path:
            return {{lines(0, 5)}};
        case site::Surface::patio:
            return {{lines(0, 6), lines(90, 6)}};
        case site::Surface::drive:
            return {{lines(30, 4), lines(-30, 8)}};
        case site::Surface::field:
            return {{lines(-60, 14)}};
        case site::Surface::shared_path:
            return {{lines(90, 5)}};
        case site::Surface::road:
            return {{lines(45, 3)}};
    }
    return {};
}

void add_tick(Items& items, Point at, Point along) {
    const Point out = quarter_turned(along) * 5;
    items.emplace_back(Line{at - out, at + out, stroked(palette::ink, weight::thin)});
}

}  // namespace

Items building_sign(Point at, double side, bool house) {
    Items items;
    const double half = side / 2;
    const auto square = [&](double reach) {
        return Box{at.x - reach, at.y - reach, at.x + reach, at.y + reach};
    };
    Style wall = stroked(palette::ink, weight::firm);
    wall.fill = palette::stone;
    if (house) {
        Style outer = stroked(palette::ink, weight::thin);
        outer.fill = palette::paper;
        items.emplace_back(Rect{square(half + 3), outer});
    }
    items.emplace_back(Rect{square(half), wall});
    const double arm = std::min(4.0, half * 0.6);
    items.emplace_back(Line{at - Point{arm, 0}, at + Point{arm, 0}, stroked(palette::ink)});
    items.emplace_back(Line{at - Point{0, arm}, at + Point{0, arm}, stroked(palette::ink)});
    return items;
}

Items electrode_sign(Point at) {
    Items items{Line{at, at + Point{0, 10}, stroked(palette::ink, weight::firm)}};
    for (int i = 0; i < 3; ++i) {
        const double half = 7 - 2.4 * i;
        const double y = at.y + 10 + 4 * i;
        items.emplace_back(
            Line{{at.x - half, y}, {at.x + half, y}, stroked(palette::ink, weight::firm)});
    }
    return items;
}

Way way_of(site::LegMethod method, bool stays) {
    if (stays) return Way::there;
    if (method == site::LegMethod::buried_direct) return Way::buried;
    if (method == site::LegMethod::buried_in_duct) return Way::duct;
    return method == site::LegMethod::overhead ? Way::overhead : Way::fixed;
}

const char* way_words(Way way) {
    switch (way) {
        case Way::buried:
            return "in the ground";
        case Way::duct:
            return "in the ground, in a duct";
        case Way::there:
            return "there today, stays in the ground";
        case Way::overhead:
            return "overhead";
        case Way::fixed:
            return "above ground, fixed";
    }
    return "";
}

Items leg_line(Point from, Point to, Way way) {
    const std::vector<Point> line{from, to};
    Items items;
    switch (way) {
        case Way::buried:
            items.emplace_back(Polyline{line, stroked(palette::ink, weight::heavy)});
            break;
        case Way::duct:
            items.emplace_back(Polyline{line, stroked(palette::ink, 5)});
            items.emplace_back(Polyline{line, stroked(palette::paper, 3)});
            items.emplace_back(Polyline{line, stroked(palette::ink, 1)});
            break;
        case Way::there:
            items.emplace_back(Polyline{line, stroked(palette::ink, 4)});
            items.emplace_back(Polyline{line, stroked(palette::paper, 2)});
            break;
        case Way::overhead:
            items.emplace_back(Polyline{line, dashed(palette::ink, 1.8, {14, 4, 2, 4})});
            break;
        case Way::fixed:
            items.emplace_back(Polyline{line, dashed(palette::ink, 1.8, {5, 3})});
            break;
    }
    const Point along = unit(to - from);
    add_tick(items, from, along);
    add_tick(items, to, along);
    return items;
}

Items surface_band(Point from, Point to, site::Surface surface) {
    const Point out = quarter_turned(unit(to - from)) * band_half;
    const std::vector<Point> outline{from - out, to - out, to + out, from + out};
    Items items{Polygon{outline, filled(palette::wash)}};
    for (const Hatch& hatch : pattern_of(surface).hatches) append(items, hatched(outline, hatch));
    items.emplace_back(Polygon{outline, stroked(palette::pencil, weight::hair)});
    return items;
}

Items north_arrow(Point top) {
    Style head = stroked(palette::ink, weight::thin);
    head.fill = palette::ink;
    return {Line{top, top + Point{0, 30}, stroked(palette::ink, weight::firm)},
            Polygon{{top, top + Point{-5, 12}, top + Point{5, 12}}, head},
            text(top + Point{0, 43}, "N",
                 {.size = 12, .weight = Weight::bold, .anchor = Anchor::middle})};
}

}  // namespace toft::digging
