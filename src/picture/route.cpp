#include "picture/route.h"

#include "base/text.h"
#include "parts/cable_words.h"
#include "parts/fittings.h"
#include "parts/surface.h"
#include "parts/words.h"
#include "picture/house.h"
#include "picture/ink.h"
#include "picture/run_way.h"
#include "picture/support.h"

#include <fmt/format.h>

#include <algorithm>

namespace toft::picture {

namespace {

/// Half the room between the cables of a pair.
constexpr double pair_half = 4;

bool has_surface(const site::Leg& leg) {
    return leg.surface && (site::buried(leg.method) || leg.method == site::LegMethod::overhead);
}

/// One cable of a stretch; those of a pair are drawn thinner.
Items cable_line(Build build, const std::vector<Point>& way, bool paired) {
    switch (build) {
        case Build::armoured:
            return armoured_line(way, paired ? 5 : 6);
        case Build::round:
            return sheathed_line(way, paired ? 4 : 4.6);
        case Build::flat:
            break;
    }
    return flat_line(way, paired ? 5 : 6);
}

void draw_cable(const answer::StretchAnswer& stretch, const std::vector<Point>& way,
                Sketch& sketch) {
    const bool paired = stretch.parallel > 1;
    Items items;
    for (const double side : {-pair_half, pair_half}) {
        append(items, cable_line(build_of(stretch), paired ? beside(way, side) : way, paired));
        if (!paired) break;
    }
    const char* build = stretch.armoured ? "cable cable-armoured" : "cable cable-unarmoured";
    sketch.put(Group{std::move(items), {}, "", build, stretch.family + " cable of the run"});
    sketch.keep_line(way, paired ? 10 : 7);
}

/// The conductor beside a stretch, from the house's terminal or a joint on.
void draw_separate(const Stage& s, std::size_t i, Sketch& sketch) {
    const std::vector<answer::StretchAnswer>& stretches = s.scheme->run.stretches;
    std::vector<Point> line = stretch_way(s, i);
    for (Point& p : line) p.y += stretches[i].parallel > 1 ? 11 : 8;
    const double low = house_terminal(s).y;
    if (i == 0) {
        line.front() = {s.route.start, low};
        line.insert(line.begin(), house_terminal(s));
    }
    if (i + 1 == stretches.size()) {
        line.back() = {s.route.end, low};
        line.push_back({s.route.end + 60, low});
    }
    sketch.keep_line(line, 3);
    sketch.put(Group{
        protective_line(line, 3.2), {}, "", "separate-conductor", "separate protective conductor"});
}

void draw_cables(const Stage& s, Sketch& sketch) {
    const std::vector<answer::StretchAnswer>& stretches = s.scheme->run.stretches;
    for (std::size_t i = 0; i < stretches.size(); ++i) {
        if (stretches[i].separate_mm2) draw_separate(s, i, sketch);
        draw_cable(stretches[i], stretch_way(s, i), sketch);
    }
    for (const Point joint : joints_of(s)) {
        sketch.thing(joint_box(joint), "joint-box", "joint box: the cable changes here");
    }
}

void draw_breaks(const Stage& s, Sketch& sketch) {
    for (std::size_t i = 0; i < s.route.legs.size(); ++i) {
        if (!s.route.legs[i].broken) continue;
        const std::vector<Point> line = leg_line(s, i);
        Point at = line.size() == 2 ? between(line[0], line[1], 0.5) : line[line.size() / 2];
        const bool below = site::buried(s.run->legs[i].method);
        if (below) at.y = (s.ground + s.soil_foot) / 2;
        if (line.size() > 2) at = line[line.size() / 4];
        sketch.thing(break_mark(at, below ? s.soil_foot - s.ground - 18 : 40,
                                below ? palette::soil : palette::paper),
                     "break", "the leg is longer than it is drawn");
    }
}

/// The widest of the legs from `first` up to but without `past`: the one to say a name at.
std::size_t widest_leg(const Stage& s, std::size_t first, std::size_t past) {
    std::size_t best = first;
    for (std::size_t i = first; i < past; ++i) {
        if (s.route.legs[i].width() > s.route.legs[best].width()) best = i;
    }
    return best;
}

Point on_leg(const Stage& s, std::size_t leg, double share) {
    const std::vector<Point> line = leg_line(s, leg);
    if (line.size() == 2) return between(line[0], line[1], share);
    return line[static_cast<std::size_t>(share * static_cast<double>(line.size() - 1))];
}

void note_stretch(const Stage& s, const answer::StretchAnswer& stretch, Sketch& sketch) {
    const std::size_t leg = widest_leg(s, static_cast<std::size_t>(stretch.first_leg - 1),
                                       static_cast<std::size_t>(stretch.last_leg));
    std::vector<std::string> more{family_words(stretch)};
    if (stretch.parallel > 1) more.push_back("side by side, of one length");
    const std::string thin = thin_core_words(stretch);
    if (!thin.empty()) more.push_back(thin);
    if (aluminium(stretch)) more.push_back("aluminium: glands and lugs made for it");
    if (stretch.separate_mm2) {
        more.push_back("and " + mm2(*stretch.separate_mm2) + " copper beside it");
    }
    // In a short leg the middle may be under a joint box.
    const double share = s.scheme->run.stretches.size() == 1 ? 0.62 : 0.4;
    sketch.callouts.push_back(note(on_leg(s, leg, share), size_words(stretch), more));
}

void note_run(const Stage& s, Sketch& sketch) {
    if (!s.scheme) {
        const std::size_t leg = widest_leg(s, 0, s.route.legs.size());
        sketch.callouts.push_back(note(on_leg(s, leg, 0.62), "run not settled"));
        return;
    }
    for (const answer::StretchAnswer& stretch : s.scheme->run.stretches) {
        note_stretch(s, stretch, sketch);
    }
    for (const Point joint : joints_of(s)) {
        sketch.callouts.push_back(note(joint + Point{0, 10}, "joint box"));
    }
    for (std::size_t i = 0; i < s.run->legs.size(); ++i) {
        const LegSpan& span = s.route.legs[i];
        if (!site::buried(s.run->legs[i].method) || span.width() < 60) continue;
        const Point target{span.right - 0.12 * span.width(), tape_level(s, i)};
        sketch.callouts.push_back(note(target, "warning tape"));
        break;
    }
}

}  // namespace

std::string leg_words(const site::Leg& leg) {
    std::string words = site::word(leg.method);
    const bool overhead = leg.method == site::LegMethod::overhead;
    if (overhead) {
        if (leg.surface) words += " over " + site::word(*leg.surface);
        return words + (leg.height.known ? ", " + length_words(leg.height) + " high"
                                         : ", height not known");
    }
    if (!site::buried(leg.method)) return words;
    if (leg.surface) words += " under " + site::word(*leg.surface);
    if (!leg.depth.known) {
        words += fmt::format(", depth not known (drawn at {} m)", significant(depth_not_known, 2));
    }
    return words;
}

void draw_ground(const Stage& s, Sketch& sketch) {
    const double right = s.wide - margin;
    sketch.put(Rect{{margin, s.ground, right, s.soil_foot}, filled(palette::soil)});
    for (std::size_t i = 0; i < s.run->legs.size(); ++i) {
        const site::Leg& leg = s.run->legs[i];
        if (!has_surface(leg)) continue;
        const Box strip{s.route.legs[i].left, s.ground - 9, s.route.legs[i].right, s.ground + 8};
        sketch.draw(surface_items(*leg.surface, strip));
    }
    sketch.put(Line{{margin, s.ground}, {right, s.ground}, stroked(palette::earth, weight::firm)});
    sketch.keep({margin, s.ground - 9, right, s.ground + 8});
}

void draw_route(const Stage& s, Sketch& sketch) {
    for (std::size_t i = 0; i < s.run->legs.size(); ++i) draw_support(s, i, sketch);
    if (s.scheme) {
        draw_cables(s, sketch);
    } else {
        sketch.put(Polyline{cable_way(s), dashed(palette::ink, 2, {7, 5})});
        sketch.keep_line(cable_way(s), 7);
    }
    draw_breaks(s, sketch);
    for (std::size_t i = 0; i < s.run->legs.size(); ++i) {
        if (!site::buried(s.run->legs[i].method)) continue;
        const double y = tape_level(s, i);
        sketch.keep({s.route.legs[i].left, y - 2, s.route.legs[i].right, y + 2});
    }
    note_run(s, sketch);
}

}  // namespace toft::picture
