#include "picture/support.h"

#include "parts/surface.h"
#include "parts/words.h"
#include "picture/ink.h"
#include "picture/run_way.h"

#include <algorithm>

namespace toft::picture {

namespace {

using site::LegMethod;

/// A level piece of the run: what holds it is drawn about `y`.
struct Piece {
    double left, right, y;
};

void saddles(const Piece& at, Sketch& sketch) {
    for (double x = at.left + 12; x < at.right - 5; x += 26) {
        sketch.put(PathBuilder({x - 5, at.y - 3})
                       .arc(5, {x + 5, at.y - 3})
                       .inked(stroked(palette::ink, 1.4)));
    }
}

void tray(const Piece& at, Sketch& sketch) {
    sketch.put(Line{{at.left, at.y + 6}, {at.right, at.y + 6}, dashed(palette::ink, 2, {6, 3})});
}

/// A round tube with its couplers.
void conduit(const Piece& at, Sketch& sketch) {
    Style tube = stroked(palette::ink, weight::thin);
    tube.fill = palette::paper;
    sketch.put(Rect{{at.left + 4, at.y - 6, at.right - 4, at.y + 6}, tube, 1});
    for (double x = at.left + 14; x < at.right - 12; x += 40) {
        sketch.put(Rect{{x, at.y - 8, x + 7, at.y + 8}, tube, 1});
    }
}

/// A square box with its lid along the upper edge.
void trunking(const Piece& at, Sketch& sketch) {
    Style box = stroked(palette::ink, weight::firm);
    box.fill = palette::wash;
    sketch.put(Rect{{at.left + 4, at.y - 10, at.right - 4, at.y + 8}, box});
    sketch.put(Line{{at.left + 4, at.y - 6}, {at.right - 4, at.y - 6}, stroked(palette::ink, 0.8)});
}

void insulation(const Piece& at, Sketch& sketch) {
    for (double x = at.left; x + 10 <= at.right; x += 10) {
        for (const double side : {-10.0, 10.0}) {
            sketch.put(PathBuilder({x, at.y + side})
                           .quad({x + 5, at.y + 1.8 * side}, {x + 10, at.y + side})
                           .inked(stroked(palette::graphite, weight::hair)));
        }
    }
}

/// The boards of a ceiling beneath the cable, seen from the side.
void ceiling(const Piece& at, Sketch& sketch) {
    const Box boards{at.left - 14, at.y + 8, at.right - 2, at.y + 12};
    Style cut = stroked(palette::ink, weight::thin);
    cut.fill = palette::stone;
    sketch.put(Rect{boards, cut});
    sketch.keep(boards);
}

void duct(const Piece& at, Sketch& sketch) {
    Style wall = stroked(palette::ink, weight::thin);
    wall.fill = palette::paper;
    sketch.put(Rect{{at.left + 3, at.y - 9, at.right - 3, at.y + 9}, wall, 2});
}

void dimension_line(double x, double top, double foot, Sketch& sketch) {
    sketch.put(Line{{x, top}, {x, foot}, stroked(palette::graphite, weight::hair)});
    for (const double end : {top, foot}) {
        sketch.put(
            Line{{x - 4, end + 4}, {x + 4, end - 4}, stroked(palette::graphite, weight::firm)});
    }
}

/// The depth as a dimension down from the ground; the figure beside it.
void depth(const Stage& s, std::size_t i, Sketch& sketch) {
    const LegSpan& span = s.route.legs[i];
    const site::Leg& leg = s.run->legs[i];
    const double y = level_of(s, i);
    if (!leg.depth.known || y - s.ground < 24 || span.width() < 60) return;
    const double x = span.left + std::min(40.0, 0.25 * span.width());
    dimension_line(x, s.ground, y, sketch);
    TextStyle style{.size = 11, .colour = palette::graphite, .halo = palette::soil};
    const double middle = s.ground + 0.27 * (y - s.ground) + 5;
    sketch.thing({Item(text({x + 7, middle}, length_words(leg.depth) + " deep", style))}, "depth",
                 "");
}

/// The height over the ground where the cable hangs lowest.
void height(const Stage& s, std::size_t i, Sketch& sketch) {
    const LegSpan& span = s.route.legs[i];
    const site::Leg& leg = s.run->legs[i];
    const std::vector<Point> line = leg_line(s, i);
    const Point lowest = line[line.size() / 2];
    dimension_line(lowest.x, lowest.y + 5, s.ground, sketch);
    const std::string words =
        leg.height.known ? length_words(leg.height) + " high" : "height not known: measure it";
    TextStyle style{.size = 11, .colour = palette::graphite, .halo = palette::paper};
    const double room = span.right - lowest.x - 16;
    sketch.thing({Item(text({lowest.x + 7, (lowest.y + s.ground) / 2 + 4},
                            shortened(words, room, style.size), style))},
                 "height", "");
}

/// Poles and the wire the cable hangs from.
void catenary(const Stage& s, std::size_t i, Sketch& sketch) {
    const LegSpan& span = s.route.legs[i];
    const double y = level_of(s, i);
    for (const double x : {span.left, span.right}) {
        sketch.put(Line{{x, y - 8}, {x, s.ground}, stroked(palette::ink, weight::firm)});
    }
    std::vector<Point> wire = beside(leg_line(s, i), 9);
    const Style thin = stroked(palette::ink, weight::thin);
    for (std::size_t k = 1; k + 1 < wire.size(); ++k) {
        sketch.put(Line{wire[k], wire[k] + Point{0, 9}, thin});
    }
    sketch.put(Polyline{wire, thin});
    sketch.keep_line(wire, 2);
    height(s, i, sketch);
}

void tape(const Stage& s, std::size_t i, Sketch& sketch) {
    const LegSpan& span = s.route.legs[i];
    const double y = tape_level(s, i);
    sketch.put(
        Line{{span.left + 6, y}, {span.right - 6, y}, dashed(palette::ink, 2.2, {9, 4, 2, 4})});
}

void in_the_air(LegMethod method, const Piece& at, Sketch& sketch) {
    switch (method) {
        case LegMethod::clipped:
            return saddles(at, sketch);
        case LegMethod::tray:
            return tray(at, sketch);
        case LegMethod::in_conduit:
            return conduit(at, sketch);
        case LegMethod::in_trunking:
            return trunking(at, sketch);
        case LegMethod::in_insulation:
            return insulation(at, sketch);
        case LegMethod::above_ceiling:
            return ceiling(at, sketch);
        default:
            return;
    }
}

}  // namespace

double tape_level(const Stage& s, std::size_t i) {
    return s.ground + 0.5 * s.units_per_metre_deep * depth_of(s.run->legs[i]);
}

void draw_support(const Stage& s, std::size_t i, Sketch& sketch) {
    const LegSpan& span = s.route.legs[i];
    const LegMethod method = s.run->legs[i].method;
    const Piece at{span.left, span.right, level_of(s, i)};
    if (method == LegMethod::overhead) return catenary(s, i, sketch);
    if (!site::buried(method)) {
        in_the_air(method, at, sketch);
        if (span.side == Side::between) {
            append(sketch.items, fence({at.left, at.y, at.right, s.ground}));
        }
        return;
    }
    tape(s, i, sketch);
    if (method == LegMethod::buried_in_duct) duct(at, sketch);
    depth(s, i, sketch);
}

}  // namespace toft::picture
