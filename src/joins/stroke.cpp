#include "joins/stroke.h"

#include "drawing/banded.h"
#include "drawing/conductor_colours.h"
#include "drawing/hatch.h"
#include "joins/ink.h"
#include "parts/core_section.h"
#include "parts/fittings.h"

#include <algorithm>

namespace toft::joins {

namespace {

constexpr double wire_wide = 3.2;
constexpr double alike_step = 7;
constexpr int most_alike = 3;  // lines drawn; the words tell how many there are
constexpr const char* green_yellow = "green-yellow";

/// Marks along the middle of a wire, so that nobody needs its colour: none, and then others.
std::vector<double> marks_of(const Conductor& conductor) {
    if (conductor.kind == Kind::neutral) return {12, 6};
    if (conductor.line == 1) return {2, 16};
    if (conductor.line == 2) return {2, 4, 2, 16};
    return {};
}

Items wire(const Conductor& conductor, const std::vector<Point>& points) {
    if (conductor.kind == Kind::armour) return armoured_line(points, conductor.alike > 1 ? 5 : 7);
    if (conductor.core.colour == green_yellow) return protective_line(points, wire_wide);
    const std::optional<Colour> colour = core_colour(conductor.core.colour);
    // A colour that has no shade here is an outline: its word stands beside it.
    Items items = colour ? cased(points, *colour, wire_wide)
                         : Items{Polyline{points, stroked(palette::ink, wire_wide + 2.2)},
                                 Polyline{points, stroked(palette::paper, wire_wide - 0.2)}};
    const std::vector<double> marks = marks_of(conductor);
    if (!marks.empty()) {
        items.emplace_back(Polyline{points, dashed(palette::paper, wire_wide / 2.4, marks)});
    }
    return items;
}

const char* kind_word(Kind kind) {
    switch (kind) {
        case Kind::line:
            return "conductor line";
        case Kind::neutral:
            return "conductor neutral";
        case Kind::core:
            return "conductor protective-core";
        case Kind::armour:
            return "conductor armour";
        case Kind::separate:
            return "conductor separate";
    }
    return "conductor";
}

}  // namespace

Items stroke(const Conductor& conductor, double left, double right, double y) {
    const int count = std::clamp(conductor.alike, 1, most_alike);
    const double top = y - alike_step * (count - 1) / 2.0;
    Items items;
    for (int i = 0; i < count; ++i) {
        const double at = top + alike_step * i;
        append(items, wire(conductor, {{left, at}, {right, at}}));
    }
    if (count > 1) {
        for (const double x : {left, right}) {
            items.emplace_back(Line{{x, top - 2},
                                    {x, top + alike_step * (count - 1) + 2},
                                    stroked(palette::ink, weight::firm)});
        }
    }
    return {Group{std::move(items),
                  {},
                  "",
                  kind_word(conductor.kind),
                  conductor.tag + ": " + conductor.words}};
}

Items sleeve(const answer::CoreAnswer& core, double left, double right, double y) {
    if (core.sleeve.empty()) return {};
    const std::vector<Point> points{{left, y}, {right, y}};
    const std::optional<Colour> colour = core_colour(core.sleeve);
    Items items = core.sleeve == green_yellow ? protective_line(points, 7)
                                              : cased(points, colour ? *colour : palette::stone, 7);
    return {Group{std::move(items), {}, "", "sleeve", "sleeve " + core.sleeve}};
}

Items lead(const std::vector<Point>& points) {
    return {Group{protective_line(points), {}, "", "lead", "protective conductor"}};
}

Items screw(Point at) {
    Style style = stroked(palette::ink, 1.2);
    style.fill = palette::paper;
    return {Circle{at, 4.6, style},
            Line{at + Point{-2.6, 2.6}, at + Point{2.6, -2.6}, stroked(palette::ink, 1.1)}};
}

Items capped(Point at, double outwards) {
    const Box cap{std::min(at.x, at.x - 10 * outwards), at.y - 6,
                  std::max(at.x, at.x - 10 * outwards), at.y + 6};
    Style shell = stroked(palette::ink, 1.4);
    shell.fill = palette::paper;
    Items items{Rect{cap, shell, 3}};
    append(items, hatched(grown(cap, -1.2),
                          {.angle = 45, .spacing = 4, .style = stroked(palette::ink, 0.6)}));
    items.emplace_back(Line{at + Point{5 * outwards, -8}, at + Point{5 * outwards, 8},
                            stroked(palette::ink, weight::firm)});
    return {Group{std::move(items), {}, "", "capped", "insulated, joined to nothing"}};
}

Items cut_back(Point at, double gland) {
    Items items;
    const double outwards = gland > at.x ? 1 : -1;
    const Box tube{std::min(at.x - 9 * outwards, at.x + 3 * outwards), at.y - 7,
                   std::max(at.x - 9 * outwards, at.x + 3 * outwards), at.y + 7};
    Style shell = stroked(palette::ink, 1.4);
    shell.fill = palette::paper;
    items.emplace_back(Rect{tube, shell, 3});
    append(items, hatched(grown(tube, -1.2),
                          {.angle = 45, .spacing = 4, .style = stroked(palette::ink, 0.6)}));
    const Point cross{(at.x + 3 * outwards + gland) / 2, at.y};
    for (const double side : {-1.0, 1.0}) {
        items.emplace_back(Line{cross + Point{-4.5, -4.5 * side}, cross + Point{4.5, 4.5 * side},
                                stroked(palette::ink, 2)});
    }
    return items;
}

Items gland(Point at, double outwards, Ending ending) {
    const double out = -7 * outwards;
    const double in = 4 * outwards;
    const bool joined = ending == Ending::joined;
    Style brass =
        joined ? stroked(palette::ink, weight::firm) : dashed(palette::ink, weight::thin, {3, 2});
    brass.fill = joined ? palette::stone : palette::paper;
    const auto nut = [&](double from, double to, double half) {
        return Rect{
            {at.x + std::min(from, to), at.y - half, at.x + std::max(from, to), at.y + half},
            brass,
            1.5};
    };
    return {Group{{nut(out, 0, 9), nut(0, in, 7)},
                  {},
                  "",
                  joined ? "gland" : "gland insulated",
                  joined ? "gland, earthed" : "insulated gland"}};
}

}  // namespace toft::joins
