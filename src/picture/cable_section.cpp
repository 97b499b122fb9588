#include "picture/cable_section.h"

#include "drawing/conductor_colours.h"
#include "drawing/label.h"
#include "drawing/measure.h"
#include "picture/ink.h"
#include "picture/words.h"

#include <cmath>
#include <numbers>

namespace toft::picture {

namespace {

constexpr double letters = 11;
constexpr double outer = 68;  // of the sheath
constexpr double wires = 56;  // of the circle the armour's wires lie on
constexpr double core = 19;   // of a core with its insulation
constexpr double copper = 11;

Point around_centre(Point centre, double radius, double degrees) {
    return centre + turned({radius, 0}, degrees);
}

/// A ring of two colours in turns, edged so that it reads without colour.
Items banded_ring(Point centre, double radius, double thick) {
    Items items;
    const double turn = 2 * std::numbers::pi * radius / 12;
    items.emplace_back(Circle{centre, radius, stroked(palette::ink, thick + 1.4)});
    items.emplace_back(Circle{centre, radius, stroked(conductor::yellow, thick)});
    items.emplace_back(Circle{centre, radius, dashed(conductor::green, thick, {turn, turn})});
    return items;
}

/// Copper strands: seven small circles.
Items strands(Point centre, double radius) {
    Items items;
    Style one = stroked(palette::ink, weight::hair);
    one.fill = palette::wash;
    items.emplace_back(Circle{centre, radius, filled(palette::paper)});
    const double r = radius / 3;
    items.emplace_back(Circle{centre, r, one});
    for (int i = 0; i < 6; ++i) {
        items.emplace_back(Circle{around_centre(centre, 2 * r, 60 * i), r, one});
    }
    return items;
}

Items armour(Point centre) {
    Items items;
    Style sheath = stroked(palette::ink, weight::thin);
    sheath.fill = palette::graphite;
    items.emplace_back(Circle{centre, outer, sheath});
    Style bedding = stroked(palette::ink, weight::thin);
    bedding.fill = palette::stone;
    items.emplace_back(Circle{centre, wires + 5, filled(palette::paper)});
    constexpr int count = 36;
    Style wire = stroked(palette::ink, weight::hair);
    wire.fill = palette::wash;
    const double r = wires * std::sin(std::numbers::pi / count);
    for (int i = 0; i < count; ++i) {
        items.emplace_back(Circle{around_centre(centre, wires, 360.0 * i / count), r, wire});
    }
    items.emplace_back(Circle{centre, wires - 5, bedding});
    return items;
}

Items core_items(const answer::CoreAnswer& one, Point centre) {
    Items items;
    const std::optional<Colour> colour = core_colour(one.colour);
    Style insulation = stroked(palette::ink, weight::thin);
    insulation.fill = colour ? *colour : palette::paper;
    items.emplace_back(Circle{centre, core, insulation});
    append(items, strands(centre, copper));
    if (one.sleeve == "green-yellow") {
        append(items, banded_ring(centre, core + 2.2, 4));
    } else if (const auto sleeve = core_colour(one.sleeve); sleeve) {
        items.emplace_back(Circle{centre, core + 2.2, stroked(palette::ink, 5.4)});
        items.emplace_back(Circle{centre, core + 2.2, stroked(*sleeve, 4)});
    }
    return items;
}

std::string core_words(const answer::CoreAnswer& one) {
    std::string words = one.colour;
    if (one.sleeve == "green-yellow") {
        words += ", sleeved green-and-yellow";
    } else if (!one.sleeve.empty()) {
        words += ", sleeved " + one.sleeve;
    }
    return words;
}

std::string armour_words(const answer::RunAnswer& run) {
    const bool serves = run.protective_conductor.find("armour") != std::string::npos;
    if (!run.armour_far) return "earthed at the house only";
    return serves ? "serves as protective conductor" : "earthed at both ends";
}

struct Named {
    Point at;
    std::string what;  ///< bold
    std::string words;
    const char* kind;
};

/// Names in a column at `left`, each with a leader to its thing; in the order of height.
Items name_column(const std::vector<Named>& named, const Box& column) {
    Items items;
    const double step = column.height() / static_cast<double>(named.size());
    for (std::size_t i = 0; i < named.size(); ++i) {
        const double y = column.top + (static_cast<double>(i) + 0.5) * step;
        const Box words{column.left - 5, y - 9, column.left, y + 9};
        append(items, leader(words, named[i].at, palette::graphite));
        TextStyle bold{.size = letters, .weight = Weight::bold};
        items.emplace_back(text({column.left + 3, y - 3},
                                shortened(named[i].what, column.width() - 3, letters, Weight::bold),
                                bold));
        items.emplace_back(text({column.left + 3, y + 10},
                                shortened(named[i].words, column.width() - 3, letters),
                                TextStyle{.size = letters}));
    }
    return items;
}

}  // namespace

std::optional<Colour> core_colour(const std::string& word) {
    if (word == "brown") return conductor::brown;
    if (word == "blue") return conductor::blue;
    if (word == "grey") return conductor::grey;
    if (word == "black") return conductor::black;
    return std::nullopt;
}

Items cable_section(const answer::RunAnswer& run, const Box& box) {
    Items items;
    const Point centre{box.left + outer + 2, box.centre().y};
    items.emplace_back(Group{armour(centre), {}, "", "armour", "sheath and armour"});
    std::vector<Named> named;
    const auto count = static_cast<int>(run.core_list.size());
    for (int i = 0; i < count; ++i) {
        const answer::CoreAnswer& one = run.core_list[static_cast<std::size_t>(i)];
        const double turn = count == 2 ? -60 + 180 * i : -75 + 360.0 / std::max(1, count) * i;
        const Point at = around_centre(centre, count == 1 ? 0 : count == 2 ? 24 : 28, turn);
        items.emplace_back(
            Group{core_items(one, at), {}, "", "core core-" + one.colour, core_words(one)});
        named.push_back({at + Point{9, 0}, one.use + " " + mm2(run.live_mm2), core_words(one), ""});
    }
    std::stable_sort(named.begin(), named.end(),
                     [](const Named& a, const Named& b) { return a.at.y < b.at.y; });
    named.push_back(
        {around_centre(centre, wires, 48), "armour, steel wires", armour_words(run), ""});
    if (run.separate_mm2) {
        const Point at = around_centre(centre, outer + 18, 62);
        Items beside = strands(at, 8);
        append(beside, banded_ring(at, 10, 4.5));
        items.emplace_back(
            Group{std::move(beside), {}, "", "separate-section", "separate conductor"});
        named.push_back({at + Point{9, 0}, "separate conductor " + mm2(*run.separate_mm2),
                         "green-and-yellow, laid beside", ""});
    }
    append(items, name_column(named, {centre.x + outer + 46, box.top, box.right, box.bottom}));
    return items;
}

}  // namespace toft::picture
