#include "parts/cable_section.h"

#include "base/text.h"
#include "drawing/conductor_colours.h"
#include "drawing/label.h"
#include "drawing/measure.h"
#include "parts/cable_words.h"
#include "parts/core_section.h"
#include "parts/ink.h"
#include "parts/words.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace toft::parts {

namespace {

constexpr double section_letters = 11;
constexpr double name_line = 13;
constexpr double sheath_radius = 68;  // of the sheath
constexpr double wires = 56;          // of the circle the armour's wires lie on
constexpr double flat_half_wide = 70;
constexpr double flat_half_high = 31;
constexpr double pair_shift = 14;  // of the second cable behind the first

Point around_centre(Point centre, double radius, double degrees) {
    return centre + turned({radius, 0}, degrees);
}

Style sheathed(Colour colour) {
    Style style = stroked(palette::ink, weight::thin);
    style.fill = colour;
    return style;
}

Items armour(Point centre) {
    Items items;
    items.emplace_back(Circle{centre, sheath_radius, sheathed(palette::graphite)});
    items.emplace_back(Circle{centre, wires + 5, filled(palette::paper)});
    constexpr int count = 36;
    Style wire = stroked(palette::ink, weight::hair);
    wire.fill = palette::wash;
    const double r = wires * std::sin(std::numbers::pi / count);
    for (int i = 0; i < count; ++i) {
        items.emplace_back(Circle{around_centre(centre, wires, 360.0 * i / count), r, wire});
    }
    items.emplace_back(Circle{centre, wires - 5, sheathed(palette::stone)});
    return items;
}

Items round_sheath(Point centre) {
    return {Circle{centre, wires + 3, sheathed(palette::graphite)},
            Circle{centre, wires - 5, sheathed(palette::stone)}};
}

Items flat_sheath(Point centre) {
    const Box box{centre.x - flat_half_wide, centre.y - flat_half_high, centre.x + flat_half_wide,
                  centre.y + flat_half_high};
    return {Rect{box, sheathed(palette::faint), flat_half_high}};
}

Group sheath_items(const answer::CableAnswer& cable, Point centre) {
    switch (build_of(cable)) {
        case Build::armoured:
            return {armour(centre), {}, "", "armour", "sheath and armour"};
        case Build::round:
            return {round_sheath(centre), {}, "", "sheath", "sheath without armour"};
        case Build::flat:
            break;
    }
    return {flat_sheath(centre), {}, "", "flat-sheath", "flat sheath"};
}

/// The edge of the second cable of a pair.
Items behind(const answer::CableAnswer& cable, Point centre) {
    if (build_of(cable) == Build::flat) return flat_sheath(centre);
    const double radius = cable.armoured ? sheath_radius : wires + 3;
    return {Circle{centre, radius, sheathed(palette::stone)}};
}

struct CorePlace {
    Point at;
    double radius;  ///< of the core with its insulation
};

/// Where core `i` lies: in a flat cable the bare one between the others, else around the centre.
CorePlace core_place(const answer::CableAnswer& cable, int i, Point centre) {
    const auto count = static_cast<int>(cable.core_list.size());
    if (build_of(cable) == Build::flat) {
        const answer::CoreAnswer& one = cable.core_list[static_cast<std::size_t>(i)];
        if (one.use == "protective") return {centre, 9};
        return {centre + Point{one.use == "neutral" ? 39.0 : -39.0, 0}, 20};
    }
    if (count == 2) return {around_centre(centre, 24, -60 + 180 * i), 19};
    const double turn = -75 + 360.0 / std::max(1, count) * i;
    if (count <= 4) return {around_centre(centre, count == 1 ? 0 : 28, turn), 19};
    return {around_centre(centre, 31, turn), 16.5};
}

std::string armour_words(const answer::CableAnswer& cable) {
    if (!cable.armour_far) return "earthed at near end";
    return armour_serves(cable) ? "serves as protective conductor" : "earthed at both ends";
}

struct Named {
    Point at;
    std::string what;  ///< bold
    std::string words;
};

/// Names in a column at `left`, each with a leader to its thing; in the order of height.
Items name_column(const std::vector<Named>& named, const Box& column) {
    Items items;
    const double step =
        column.height() / static_cast<double>(std::max<std::size_t>(1, named.size()));
    for (std::size_t i = 0; i < named.size(); ++i) {
        const double y = column.top + (static_cast<double>(i) + 0.5) * step;
        const Box beside{column.left - 5, y - 9, column.left, y + 9};
        append(items, leader(beside, named[i].at, palette::graphite));
        TextStyle bold{.size = section_letters, .weight = Weight::bold};
        const double room = column.width() - 3;
        const std::size_t most = step >= 4 * name_line + 4 ? 2 : 1;
        const auto what = broken(named[i].what, room, bold, most);
        const auto words = broken(named[i].words, room, TextStyle{.size = section_letters}, most);
        double base = y + 10 - 0.5 * name_line * static_cast<double>(what.size() + words.size());
        for (const std::string& line : what) {
            items.emplace_back(text({column.left + 3, base}, line, bold));
            base += name_line;
        }
        for (const std::string& line : words) {
            items.emplace_back(
                text({column.left + 3, base}, line, TextStyle{.size = section_letters}));
            base += name_line;
        }
    }
    return items;
}

/// The cores, and a name for each.
std::vector<Named> draw_cores(const answer::CableAnswer& cable, Point centre, Items& items) {
    std::vector<Named> named;
    const std::string metal = aluminium(cable) ? ", aluminium" : "";
    for (int i = 0; i < static_cast<int>(cable.core_list.size()); ++i) {
        const answer::CoreAnswer& one = cable.core_list[static_cast<std::size_t>(i)];
        const CorePlace place = core_place(cable, i, centre);
        items.emplace_back(Group{core_section(one, place.at, place.radius),
                                 {},
                                 "",
                                 "core core-" + one.colour,
                                 core_words(one)});
        const double mm =
            one.use == "protective" && cable.cpc_mm2 ? *cable.cpc_mm2 : cable.live_mm2;
        named.push_back({place.at + Point{0.45 * place.radius, 0}, one.use + " " + mm2(mm),
                         core_words(one) + metal});
    }
    if (build_of(cable) == Build::flat) return named;
    std::stable_sort(named.begin(), named.end(),
                     [](const Named& a, const Named& b) { return a.at.y < b.at.y; });
    return named;
}

/// Sheath and armour in words; how thick the cable is belongs to them.
Named sheath_name(const answer::CableAnswer& cable, Point centre) {
    const bool flat = build_of(cable) == Build::flat;
    const std::string thick =
        cable.overall_mm > 0 && !flat ? ", " + significant(cable.overall_mm, 3) + " mm" : "";
    if (cable.armoured) {
        return {around_centre(centre, wires, 48), "steel wire armour" + thick, armour_words(cable)};
    }
    if (flat) return {centre + Point{flat_half_wide - 8, 14}, "flat sheath", "no armour"};
    return {around_centre(centre, wires - 1, 48), "sheath" + thick, "no armour"};
}

}  // namespace

Items cable_section(const answer::CableAnswer& cable, const Box& box) {
    Items items;
    const bool paired = cable.parallel > 1;
    const Point centre{box.left + sheath_radius + 4 + (paired ? pair_shift : 0), box.centre().y};
    if (paired) {
        items.emplace_back(Group{behind(cable, centre - Point{pair_shift, 0}),
                                 {},
                                 "",
                                 "second-cable",
                                 "an equal cable beside it"});
    }
    items.emplace_back(sheath_items(cable, centre));
    std::vector<Named> named = draw_cores(cable, centre, items);
    named.push_back(sheath_name(cable, centre));
    if (cable.separate_mm2) {
        const Point at = around_centre(centre, sheath_radius + 18, 62);
        items.emplace_back(
            Group{separate_section(at), {}, "", "separate-section", "separate conductor"});
        named.push_back({at + Point{9, 0}, "separate conductor " + mm2(*cable.separate_mm2),
                         "green-and-yellow, laid beside"});
    }
    if (paired) {
        named.push_back(
            {centre + Point{-sheath_radius - 10, 24}, size_words(cable), "equal, side by side"});
        named.back().at = around_centre(centre - Point{pair_shift, 0}, sheath_radius - 2, 105);
    }
    append(items, name_column(named, {centre.x + sheath_radius + (paired ? 36 : 44), box.top,
                                      box.right, box.bottom}));
    return items;
}

}  // namespace toft::parts
