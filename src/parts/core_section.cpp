#include "parts/core_section.h"

#include "drawing/conductor_colours.h"
#include "parts/ink.h"

#include <numbers>

namespace toft::parts {

namespace {

constexpr const char* green_yellow = "green-yellow";

/// A ring of two colours in turns, edged so that it reads without colour.
Items banded_ring(Point centre, double radius, double thick) {
    Items items;
    const double turn = 2 * std::numbers::pi * radius / 12;
    items.emplace_back(Circle{centre, radius, stroked(palette::ink, thick + 1.4)});
    items.emplace_back(Circle{centre, radius, stroked(conductor::yellow, thick)});
    items.emplace_back(Circle{centre, radius, dashed(conductor::green, thick, {turn, turn})});
    return items;
}

/// Strands: seven small circles.
Items strands(Point centre, double radius) {
    Items items;
    Style one = stroked(palette::ink, weight::hair);
    one.fill = palette::wash;
    items.emplace_back(Circle{centre, radius, filled(palette::paper)});
    const double r = radius / 3;
    items.emplace_back(Circle{centre, r, one});
    for (int i = 0; i < 6; ++i) {
        items.emplace_back(Circle{centre + turned({2 * r, 0}, 60 * i), r, one});
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

Items core_section(const answer::CoreAnswer& core, Point centre, double radius) {
    if (core.colour == "bare") return strands(centre, radius);
    Items items;
    const double metal = 0.58 * radius;
    const std::optional<Colour> colour = core_colour(core.colour);
    Style insulation = stroked(palette::ink, weight::thin);
    insulation.fill = colour ? *colour : palette::paper;
    items.emplace_back(Circle{centre, radius, insulation});
    if (core.colour == green_yellow) {
        append(items, banded_ring(centre, (radius + metal) / 2, radius - metal - 1.4));
    }
    append(items, strands(centre, metal));
    if (core.sleeve == green_yellow) {
        append(items, banded_ring(centre, radius + 2.2, 4));
    } else if (const auto sleeve = core_colour(core.sleeve); sleeve) {
        items.emplace_back(Circle{centre, radius + 2.2, stroked(palette::ink, 5.4)});
        items.emplace_back(Circle{centre, radius + 2.2, stroked(*sleeve, 4)});
    }
    return items;
}

Items separate_section(Point centre) {
    Items items = strands(centre, 8);
    append(items, banded_ring(centre, 10, 4.5));
    return items;
}

std::string core_words(const answer::CoreAnswer& core) {
    const auto named = [](const std::string& colour) {
        return colour == green_yellow ? std::string("green-and-yellow") : colour;
    };
    if (core.sleeve.empty()) return named(core.colour);
    return named(core.colour) + ", sleeved " + named(core.sleeve);
}

}  // namespace toft::parts
