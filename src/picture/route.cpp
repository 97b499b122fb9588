#include "picture/route.h"

#include "base/text.h"
#include "drawing/banded.h"
#include "drawing/conductor_colours.h"
#include "drawing/hatch.h"
#include "drawing/measure.h"
#include "picture/fittings.h"
#include "picture/house.h"
#include "picture/ink.h"
#include "picture/surface.h"
#include "picture/words.h"

#include <fmt/format.h>

namespace toft::picture {

namespace {

constexpr double depth_not_known = 0.5;  // metres, drawn only

double depth_of(const site::Leg& leg) {
    return leg.depth.known ? leg.depth.high.number() : depth_not_known;
}

/// Height of a leg on paper.
double level_of(const Stage& s, std::size_t i) {
    const site::Leg& leg = s.run->legs[i];
    if (site::buried(leg.method)) return s.ground + s.units_per_metre_deep * depth_of(leg);
    if (leg.method == site::LegMethod::overhead) return s.ground - 132;
    if (s.route.legs[i].side == Side::between) return s.ground - 36;
    if (leg.method == site::LegMethod::above_ceiling) return s.eaves + 24;
    return s.indoors();
}

/// The leg's points: level, or hanging between its ends.
void add_leg(const Stage& s, std::size_t i, std::vector<Point>& way) {
    const LegSpan& span = s.route.legs[i];
    const double y = level_of(s, i);
    if (s.run->legs[i].method != site::LegMethod::overhead) {
        way.insert(way.end(), {{span.left, y}, {span.right, y}});
        return;
    }
    for (int step = 0; step <= 12; ++step) {
        const double t = step / 12.0;
        way.push_back({span.left + t * span.width(), y + 4 * 18 * t * (1 - t)});
    }
}

std::vector<Point> leg_line(const Stage& s, std::size_t i) {
    std::vector<Point> line;
    add_leg(s, i, line);
    return line;
}

std::vector<Point> beside(std::vector<Point> line, double by) {
    for (Point& p : line) p.y += by;
    return line;
}

void draw_duct(const Stage& s, std::size_t i, Sketch& sketch) {
    const LegSpan& span = s.route.legs[i];
    const double y = level_of(s, i);
    const Box duct{span.left + 3, y - 9, span.right - 3, y + 9};
    Style wall = stroked(palette::ink, weight::thin);
    wall.fill = palette::paper;
    sketch.put(Rect{duct, wall, 2});
}

/// Tape above a cable in the ground, half way up.
void draw_tape(const Stage& s, std::size_t i, Sketch& sketch) {
    const LegSpan& span = s.route.legs[i];
    const double y = s.ground + 0.5 * s.units_per_metre_deep * depth_of(s.run->legs[i]);
    sketch.put(
        Line{{span.left + 6, y}, {span.right - 6, y}, dashed(palette::ink, 2.2, {9, 4, 2, 4})});
}

/// The depth as a dimension down from the ground; the figure beside it.
void draw_depth(const Stage& s, std::size_t i, Sketch& sketch) {
    const LegSpan& span = s.route.legs[i];
    const site::Leg& leg = s.run->legs[i];
    const double y = level_of(s, i);
    if (!leg.depth.known || y - s.ground < 24 || span.width() < 60) return;
    const double x = span.left + std::min(40.0, 0.25 * span.width());
    sketch.put(Line{{x, s.ground}, {x, y}, stroked(palette::graphite, weight::hair)});
    for (const double end : {s.ground, y}) {
        sketch.put(
            Line{{x - 4, end + 4}, {x + 4, end - 4}, stroked(palette::graphite, weight::firm)});
    }
    TextStyle style{.size = 11, .colour = palette::graphite, .halo = palette::soil};
    const double middle = s.ground + 0.27 * (y - s.ground) + 5;
    sketch.thing({Item(text({x + 7, middle}, length_words(leg.depth) + " deep", style))}, "depth",
                 "");
}

/// Saddles, tray or tube of a leg that is not in the ground.
void draw_support(const Stage& s, std::size_t i, Sketch& sketch) {
    const LegSpan& span = s.route.legs[i];
    const double y = level_of(s, i);
    const Style thin = stroked(palette::ink, weight::thin);
    switch (s.run->legs[i].method) {
        case site::LegMethod::clipped:
            for (double x = span.left + 12; x < span.right - 5; x += 26) {
                sketch.put(PathBuilder({x - 5, y - 3})
                               .arc(5, {x + 5, y - 3})
                               .inked(stroked(palette::ink, 1.4)));
            }
            break;
        case site::LegMethod::tray:
            sketch.put(
                Line{{span.left, y + 6}, {span.right, y + 6}, dashed(palette::ink, 2, {6, 3})});
            break;
        case site::LegMethod::in_conduit:
        case site::LegMethod::in_trunking:
            for (const double side : {-8.0, 8.0}) {
                sketch.put(Line{{span.left + 4, y + side}, {span.right - 4, y + side}, thin});
            }
            break;
        case site::LegMethod::in_insulation:
            for (double x = span.left; x + 10 <= span.right; x += 10) {
                for (const double side : {-10.0, 10.0}) {
                    sketch.put(PathBuilder({x, y + side})
                                   .quad({x + 5, y + 1.8 * side}, {x + 10, y + side})
                                   .inked(stroked(palette::graphite, weight::hair)));
                }
            }
            break;
        case site::LegMethod::overhead:
            for (const double x : {span.left, span.right}) {
                sketch.put(Line{{x, y - 8}, {x, s.ground}, stroked(palette::ink, weight::firm)});
            }
            break;
        default:
            break;
    }
    if (span.side == Side::between && !site::buried(s.run->legs[i].method) &&
        s.run->legs[i].method != site::LegMethod::overhead) {
        append(sketch.items, fence({span.left, y, span.right, s.ground}));
    }
}

void draw_between(const Stage& s, std::size_t i, Sketch& sketch) {
    if (site::buried(s.run->legs[i].method)) {
        draw_tape(s, i, sketch);
        if (s.run->legs[i].method == site::LegMethod::buried_in_duct) draw_duct(s, i, sketch);
        draw_depth(s, i, sketch);
    } else {
        draw_support(s, i, sketch);
    }
}

/// The middle of the widest leg outside, the leg to say the cable's name at.
std::size_t widest_leg(const Stage& s) {
    std::size_t best = 0;
    for (std::size_t i = 0; i < s.route.legs.size(); ++i) {
        if (s.route.legs[i].width() > s.route.legs[best].width()) best = i;
    }
    return best;
}

void note_cable(const Stage& s, Sketch& sketch) {
    const std::size_t leg = widest_leg(s);
    const Point target{s.route.legs[leg].left + 0.62 * s.route.legs[leg].width(), level_of(s, leg)};
    if (!s.scheme) {
        sketch.callouts.push_back(note(target, "run not settled"));
        return;
    }
    const answer::RunAnswer& run = s.scheme->run;
    std::vector<std::string> more{run.family + " cable"};
    if (run.separate_mm2) {
        more.push_back("and " + mm2(*run.separate_mm2) + " copper beside it");
    }
    sketch.callouts.push_back(
        note(target, fmt::format("{}-core {}", run.cores, mm2(run.live_mm2)), more));
    for (std::size_t i = 0; i < s.run->legs.size(); ++i) {
        const LegSpan& span = s.route.legs[i];
        if (!site::buried(s.run->legs[i].method) || span.width() < 60) continue;
        const double y = s.ground + 0.5 * s.units_per_metre_deep * depth_of(s.run->legs[i]);
        sketch.callouts.push_back(note({span.right - 0.12 * span.width(), y}, "warning tape"));
        break;
    }
}

void keep_clear(const Stage& s, Sketch& sketch) {
    sketch.keep_line(cable_way(s), 7);
    for (std::size_t i = 0; i < s.run->legs.size(); ++i) {
        if (!site::buried(s.run->legs[i].method)) continue;
        const double y = s.ground + 0.5 * s.units_per_metre_deep * depth_of(s.run->legs[i]);
        sketch.keep({s.route.legs[i].left, y - 2, s.route.legs[i].right, y + 2});
    }
}

}  // namespace

std::vector<Point> cable_way(const Stage& s) {
    std::vector<Point> way{feed_point(s)};
    if (s.route.legs.empty()) return way;
    way.push_back({s.route.start, feed_point(s).y});
    for (std::size_t i = 0; i < s.route.legs.size(); ++i) add_leg(s, i, way);
    way.push_back({s.route.end, s.indoors()});
    way.push_back({s.route.end + 24, s.indoors()});
    return way;
}

std::string leg_words(const site::Leg& leg) {
    std::string words = site::word(leg.method);
    if (!site::buried(leg.method)) return words;
    if (leg.surface) words += " under " + site::word(*leg.surface);
    if (!leg.depth.known) {
        words += fmt::format(", depth not known (drawn at {} m)", significant(depth_not_known, 2));
    }
    return words;
}

void draw_ground(const Stage& s, Sketch& sketch) {
    const double right = sheet_wide - margin;
    sketch.put(Rect{{margin, s.ground, right, s.soil_foot}, filled(palette::soil)});
    for (std::size_t i = 0; i < s.run->legs.size(); ++i) {
        const site::Leg& leg = s.run->legs[i];
        if (!site::buried(leg.method)) continue;
        const Box strip{s.route.legs[i].left, s.ground - 9, s.route.legs[i].right, s.ground + 8};
        if (leg.surface) sketch.draw(surface_items(*leg.surface, strip));
    }
    sketch.put(Line{{margin, s.ground}, {right, s.ground}, stroked(palette::earth, weight::firm)});
    sketch.keep({margin, s.ground - 9, right, s.ground + 8});
}

void draw_route(const Stage& s, Sketch& sketch) {
    for (std::size_t i = 0; i < s.run->legs.size(); ++i) draw_between(s, i, sketch);
    const std::vector<Point> way = cable_way(s);
    if (s.scheme) {
        if (s.scheme->run.separate_mm2) {
            std::vector<Point> line = beside(way, 8);
            line.front() = house_terminal(s);
            line[1] = {s.route.start, house_terminal(s).y};
            line.pop_back();
            line.back() = {s.route.end, house_terminal(s).y};
            line.push_back({s.route.end + 60, house_terminal(s).y});
            sketch.keep_line(line, 3);
            sketch.put(Group{protective_line(line, 3.2),
                             {},
                             "",
                             "separate-conductor",
                             "separate protective conductor"});
        }
        sketch.put(Group{armoured_line(way), {}, "", "cable", "the run's cable"});
    } else {
        sketch.put(Polyline{way, dashed(palette::ink, 2, {7, 5})});
    }
    for (std::size_t i = 0; i < s.route.legs.size(); ++i) {
        const LegSpan& span = s.route.legs[i];
        if (!span.broken) continue;
        const std::vector<Point> line = leg_line(s, i);
        Point at = line.size() == 2 ? between(line[0], line[1], 0.5) : line[line.size() / 2];
        const bool below = site::buried(s.run->legs[i].method);
        if (below) at.y = (s.ground + s.soil_foot) / 2;
        sketch.thing(break_mark(at, below ? s.soil_foot - s.ground - 18 : 40,
                                below ? palette::soil : palette::paper),
                     "break", "the leg is longer than it is drawn");
    }
    keep_clear(s, sketch);
    note_cable(s, sketch);
}

}  // namespace toft::picture
