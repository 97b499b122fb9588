#include "picture/metalwork.h"

#include "drawing/hatch.h"
#include "parts/fittings.h"
#include "parts/words.h"
#include "picture/ink.h"

#include <fmt/format.h>

#include <algorithm>

namespace toft::picture {

namespace {

constexpr double spacing = 38;

double pipe_width(site::Metal what) {
    switch (what) {
        case site::Metal::drain:
            return 15;
        case site::Metal::structural_steel:
        case site::Metal::frame:
            return 12;
        default:
            return 8;
    }
}

/// Down from the room into the ground, and on to where the part comes from.
std::vector<Point> part_way(const Stage& s, const site::Metalwork& metal, double x, double head) {
    std::vector<Point> way{{x, head}};
    if (metal.comes_from == site::ComesFrom::ground) {
        way.push_back({x, s.ground + 74});
        return way;
    }
    const double deep = s.ground + 140;
    way.push_back({x, deep});
    const bool house = metal.comes_from == site::ComesFrom::house;
    way.push_back({house ? s.route.far_start - 90 : s.wide - margin, deep});
    return way;
}

/// A plastic piece let into the pipe just above the floor.
Items insulating_section(Point at, double width) {
    Items items;
    const Box box = box_at(at - Point{width / 2 + 1, 9}, width + 2, 18);
    Style style = stroked(palette::ink, weight::thin);
    style.fill = palette::paper;
    items.emplace_back(Rect{box, style});
    append(items, hatched(box, {.angle = 45, .spacing = 3.5, .style = stroked(palette::ink, 0.6)}));
    return items;
}

std::string from_words(const site::Metalwork& metal) {
    if (metal.comes_from == site::ComesFrom::other_building) return "from another building";
    return "from the " + site::word(metal.comes_from);
}

std::vector<std::string> words_of(const Part& part, bool settled) {
    std::vector<std::string> more;
    if (part.kind == PartKind::not_surveyed) more.push_back("not surveyed; if it is there:");
    if (part.metal) {
        std::string origin = part.metal->material;
        if (!origin.empty()) origin += ", ";
        more.push_back(origin + from_words(*part.metal));
        if (part.metal->insulating_section == site::Answer::yes)
            more.push_back("insulating section");
    }
    if (part.bond) {
        more.push_back("bond " + mm2(part.bond->size_mm2) + " copper");
        more.push_back("at least " + mm2(part.bond->required_mm2));
    } else if (settled) {
        more.push_back("no bond asked for");
    }
    return more;
}

void draw_bond(Point terminal, Point clamp, const Part& part, Sketch& sketch) {
    if (!part.bond) return;
    Items items = protective_line({terminal, clamp});
    items.emplace_back(Circle{clamp, 3.6, filled(palette::ink)});
    sketch.put(Group{std::move(items), {}, "", "bond", "bond to the " + part.what});
    sketch.keep_line({terminal, clamp}, 3);
}

/// The building's own metal: bonded at its wall.
void draw_own_metal(const Stage& s, const Part& part, Point terminal, Sketch& sketch) {
    const Point wall{s.far_box.right - 5, terminal.y};
    draw_bond(terminal, wall, part, sketch);
    sketch.callouts.push_back(
        note(wall - Point{0, 26}, part.what, words_of(part, s.scheme != nullptr)));
}

void draw_part(const Stage& s, const Part& part, Point terminal, double x, Sketch& sketch) {
    const site::Metalwork& metal = *part.metal;
    const double wide = pipe_width(metal.what);
    const bool rises = metal.what == site::Metal::structural_steel ||
                       metal.what == site::Metal::frame || metal.what == site::Metal::lightning_rod;
    const double head = rises ? s.far_box.top + 6 : s.ground - 78;
    const std::vector<Point> way = part_way(s, metal, x, head);
    Items items = pipe(way, wide);
    if (metal.insulating_section == site::Answer::yes) {
        append(items, insulating_section({x, s.ground - 16}, wide));
    }
    sketch.put(Group{std::move(items), {}, "", "metal", part.what});
    for (std::size_t i = 1; i < way.size(); ++i) {
        sketch.keep(grown(joined(joined(Box{}, way[i - 1]), way[i]), wide / 2 + 1));
    }
    draw_bond(terminal, {x, terminal.y}, part, sketch);
    const bool in_ground = metal.comes_from != site::ComesFrom::ground;
    const Point target = in_ground
                             ? Point{way.back().x + (way.back().x < x ? 30.0 : -14.0), way.back().y}
                             : Point{x, s.ground + 46};
    sketch.callouts.push_back(note(target, part.what, words_of(part, s.scheme != nullptr)));
}

/// Something that may be there: an outline in dashes.
void draw_not_surveyed(const Stage& s, const Part& part, Point terminal, double x, Sketch& sketch) {
    const Box box{x - 5, s.ground - 78, x + 5, s.ground + 74};
    Items items;
    items.emplace_back(Rect{box, dashed(palette::graphite, weight::thin, {5, 4})});
    TextStyle style{.size = 13, .weight = Weight::bold, .anchor = Anchor::middle};
    items.emplace_back(text({x, s.ground - 84}, "?", style));
    sketch.thing(std::move(items), "not-surveyed", part.what);
    draw_bond(terminal, {x, terminal.y}, part, sketch);
    const std::string head = part.what.substr(0, part.what.find(','));
    sketch.callouts.push_back(note({x, s.ground + 50}, head, words_of(part, s.scheme != nullptr)));
}

/// What is not drawn is said, its bonds first.
void note_the_rest(const Stage& s, Point terminal, Sketch& sketch) {
    if (s.parts.size() <= most_parts) return;
    std::vector<std::string> more;
    std::string others;
    for (std::size_t i = most_parts; i < s.parts.size(); ++i) {
        const Part& part = s.parts[i];
        if (part.bond) {
            more.push_back(part.what + ": bond " + mm2(part.bond->size_mm2));
        } else {
            others += (others.empty() ? "" : ", ") + part.what;
        }
    }
    const std::size_t rest = s.parts.size() - most_parts;
    if (more.size() > 5) {
        more.resize(5);
        more.push_back("and others: see the list of bonds");
    }
    if (!others.empty()) more.push_back(others);
    sketch.callouts.push_back(note(terminal, fmt::format("{} more parts not drawn", rest), more));
}

}  // namespace

void draw_metalwork(const Stage& s, Point terminal, double left, Sketch& sketch) {
    double x = left;
    for (std::size_t i = 0; i < std::min(most_parts, s.parts.size()); ++i) {
        const Point from = terminal + Point{0, -8 + 7 * static_cast<double>(i)};
        const Part& part = s.parts[i];
        if (part.kind == PartKind::frame) {
            draw_own_metal(s, part, from, sketch);
            continue;
        }
        if (part.kind == PartKind::entering) draw_part(s, part, from, x, sketch);
        if (part.kind == PartKind::not_surveyed) draw_not_surveyed(s, part, from, x, sketch);
        x += spacing;
    }
    note_the_rest(s, terminal, sketch);
}

}  // namespace toft::picture
