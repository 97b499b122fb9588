#include "joins/panel.h"

#include "joins/ink.h"
#include "joins/rows.h"
#include "joins/stroke.h"
#include "parts/cable_words.h"
#include "parts/words.h"

#include <algorithm>
#include <array>
#include <optional>

namespace toft::joins {

namespace {

constexpr double name_letters = 11;
constexpr double name_step = 14;
constexpr double cut_at = 30;     // from the wall, where isolated armour ends
constexpr double bar_room = 24;   // right of the main switch, for the neutral bar
constexpr double cap_at = 14;     // inside the wall, where an isolated core ends
constexpr double sheath_in = 36;  // from the walls

/// One end of the panel with its places across the sheet.
struct Half {
    End end;
    double outer = 0, wall = 0, screw = 0;
    double outwards = 1;  ///< 1: the conductor ends rightwards
    bool bar = false;     ///< a neutral bar is drawn behind the main switch

    Ending ending(const Conductor& c) const { return end.side == Side::near ? c.near : c.far; }
    const std::vector<std::string>& words(const Row& row) const {
        return end.side == Side::near ? row.near : row.far;
    }
    double into(double by) const { return wall + outwards * by; }
};

/// The rows that the device, or the main switch, stands around.
std::optional<Box> box_around(const Half& half, const std::vector<Row>& rows) {
    Box box;
    const double edge = half.bar ? bar_room : 5;
    for (const Row& row : rows) {
        const bool line = row.conductor.kind == Kind::line;
        const bool neutral = row.conductor.kind == Kind::neutral;
        const bool inside = half.end.around == Around::lines
                                ? line
                                : half.end.around == Around::lines_and_neutral && (line || neutral);
        if (!inside) continue;
        box = joined(box, Point{half.outer - edge * half.outwards, row.top + 3});
        box = joined(box, Point{half.screw, row.foot - 2});
    }
    if (box.empty()) return std::nullopt;
    return box;
}

/// From the first to the last conductor that is joined to earth there.
std::optional<Box> earth_bar(const Half& half, const std::vector<Row>& rows) {
    Box box;
    for (const Row& row : rows) {
        if (!row.conductor.earth() || half.ending(row.conductor) != Ending::joined) continue;
        box = joined(box, {half.screw - 6, row.y - 11, half.screw + 6, row.y + 11});
    }
    if (box.empty()) return std::nullopt;
    return box;
}

Items enclosure(const Half& half, const std::vector<Row>& rows, double top, double foot) {
    Style shell = stroked(palette::ink, weight::firm);
    shell.fill = palette::paper;
    const Box box{std::min(half.outer, half.wall), top, std::max(half.outer, half.wall), foot};
    Items items{Rect{box, shell, 4}};
    if (const auto device = box_around(half, rows)) {
        Style edge = stroked(palette::ink, weight::thin);
        edge.fill = palette::wash;
        items.emplace_back(Group{{Rect{*device, edge, 3}}, {}, "", "device", half.end.lines});
    }
    const TextStyle style{.size = name_letters, .weight = Weight::bold};
    double y = top + 14;
    for (const std::string& line : broken(half.end.name, box.width() - 14, style, 3)) {
        items.emplace_back(text({box.left + 7, y}, line, style));
        y += name_step;
    }
    return {Group{std::move(items), {}, "", "enclosure", half.end.name}};
}

Items earth_bar_items(const Half& half, const std::vector<Row>& rows) {
    const auto bar = earth_bar(half, rows);
    if (!bar) return {};
    Style style = stroked(palette::ink, weight::thin);
    style.fill = palette::stone;
    return {Group{{Rect{*bar, style, 2}}, {}, "", "earth-bar", half.end.earth}};
}

/// What stands where the conductor ends: screw, cap, gland.
Items ends_of(const Half& half, const Row& row) {
    const Conductor& c = row.conductor;
    const Ending ending = half.ending(c);
    const bool near = half.end.side == Side::near;
    if (c.kind == Kind::armour) {
        Items items = gland({half.wall, row.y}, half.outwards, ending);
        if (ending == Ending::joined) {
            append(items, lead({{half.into(5), row.y}, {half.screw, row.y}}));
            append(items, screw({half.screw, row.y}));
        } else {
            append(items, cut_back({half.into(-cut_at), row.y}, half.into(-8)));
        }
        const std::string kind = std::string("armour-end ") + (near ? "near " : "far ") +
                                 (ending == Ending::joined ? "joined" : "isolated");
        return {Group{std::move(items), {}, "", kind, terminal_words(half.end, c)}};
    }
    if (ending == Ending::isolated) {
        return capped({half.into(cap_at), row.y}, half.outwards);
    }
    const double a = half.into(5);
    const double b = half.screw - 7 * half.outwards;
    Items items = sleeve(c.core, std::min(a, b), std::max(a, b), row.y);
    append(items, screw({half.screw, row.y}));
    return items;
}

/// Where the line of the conductor ends on that side.
double reach(const Half& half, const Conductor& c) {
    const bool joined = half.ending(c) == Ending::joined;
    if (c.kind == Kind::armour) return joined ? half.into(-7) : half.into(-cut_at);
    return joined ? half.screw : half.into(cap_at - 8);
}

Items words_at(const Half& half, const Row& row) {
    const std::vector<std::string>& lines = half.words(row);
    TextStyle style{
        .size = terminal_letters,
        .weight = half.ending(row.conductor) == Ending::isolated ? Weight::bold : Weight::normal};
    style.anchor = half.outwards > 0 ? Anchor::start : Anchor::end;
    const double step = 1.25 * terminal_letters;
    double y = row.y - step * static_cast<double>(lines.size()) / 2 + 0.95 * terminal_letters;
    Items items;
    for (const std::string& line : lines) {
        items.emplace_back(text({half.screw + 9 * half.outwards, y}, line, style));
        y += step;
    }
    return items;
}

Items words_between(const Frame& f, const Row& row) {
    const Conductor& c = row.conductor;
    double y = row.y - words_over(c) - f.line() * (static_cast<double>(lines_of(f, row)) - 1);
    Items items{text({f.words_left, y}, c.tag, {.size = f.letters, .weight = Weight::bold})};
    if (f.tight) y += f.line();
    for (const std::string& line : row.what) {
        items.emplace_back(text({f.words_left + tag_room(f, c), y}, line, {.size = f.letters}));
        y += f.line();
    }
    return items;
}

/// The sheath around cores and armour, cut back before either end.
Items sheath(const Frame& f, const std::vector<Row>& rows, bool armoured) {
    Box box;
    const double in = f.tight ? 1 : sheath_in;
    for (const Row& row : rows) {
        if (row.conductor.kind == Kind::separate) continue;
        box = joined(box, Box{f.near_wall + in, row.top + 1, f.far_wall - in, row.foot - 3});
    }
    if (box.empty()) return {};
    Style style = f.tight ? Style{} : stroked(palette::pencil, armoured ? weight::firm : 1.0);
    style.fill = palette::wash;
    return {Group{{Rect{box, style, 8}}, {}, "", "sheath", "the cable's sheath"}};
}

/// The far board's neutral bar, behind its main switch.
Items neutral_bar(const Half& half, const std::vector<Row>& rows) {
    if (!half.bar) return {};
    Items items;
    for (const Row& row : rows) {
        if (row.conductor.kind != Kind::neutral) continue;
        const double x = half.outer - 9;
        append(items, stroke(row.conductor, half.outer - bar_room, x, row.y));
        Style style = stroked(palette::ink, weight::thin);
        style.fill = palette::stone;
        items.emplace_back(Rect{{x - 4, row.y - 12, x + 4, row.y + 12}, style, 1});
    }
    return {Group{std::move(items), {}, "", "neutral-bar", "neutral bar"}};
}

}  // namespace

Panel panel(const picture::Stage& stage, std::size_t stretch, const Box& room) {
    const Frame f = frame_of(room.left, room.right);
    const Half near{end_of(stage, stretch, Side::near), f.left, f.near_wall, f.near_screw, -1};
    Half far{end_of(stage, stretch, Side::far), f.right, f.far_wall, f.far_screw, 1};
    far.bar = !f.tight && far.end.around == Around::lines_and_neutral;
    const TextStyle bold{.size = name_letters, .weight = Weight::bold};
    const double wide = f.near_wall - f.left - 14;
    const std::size_t names = std::max(broken(near.end.name, wide, bold, 3).size(),
                                       broken(far.end.name, wide, bold, 3).size());
    const double first = room.top + 8 + name_step * static_cast<double>(names);
    const std::vector<Row> rows =
        rows_of(conductors_of(*stage.scheme, stretch), f, near.end, far.end, first);
    const double foot = (rows.empty() ? first : rows.back().foot) + 4;
    const std::array<const Half*, 2> ends{&near, &far};
    Panel out{sheath(f, rows, stage.scheme->run.stretches.at(stretch).armoured), foot};
    for (const Half* half : ends) {
        append(out.items, enclosure(*half, rows, room.top, foot));
        append(out.items, earth_bar_items(*half, rows));
        append(out.items, neutral_bar(*half, rows));
    }
    for (const Row& row : rows) {
        append(out.items,
               stroke(row.conductor, reach(near, row.conductor), reach(far, row.conductor), row.y));
        for (const Half* half : ends) {
            append(out.items, ends_of(*half, row));
            append(out.items, words_at(*half, row));
        }
        append(out.items, words_between(f, row));
    }
    return out;
}

}  // namespace toft::joins
