#include "terrain/soil_column.h"

#include "drawing/hatch.h"
#include "drawing/label.h"
#include "drawing/measure.h"
#include "terrain/figures.h"
#include "terrain/ink.h"
#include "terrain/paper.h"
#include "terrain/sheet.h"

#include <fmt/format.h>

namespace toft::terrain {

namespace {

constexpr double rod_inset = 14;  // of the rod from the column's left
constexpr double letters = 10.5;

const Hatch signs[] = {{.angle = 0, .spacing = 0},
                       {.angle = 35, .spacing = 8},
                       {.angle = -45, .spacing = 5},
                       {.angle = 90, .spacing = 6}};

/// Top and bottom of a layer, metres; the deepest has no bottom.
struct Depths {
    double top = 0;
    std::optional<double> bottom, least, most;
};

std::vector<Depths> depths_of(const answer::SoilAnswer& soil) {
    std::vector<Depths> all;
    double best = 0, low = 0, high = 0;
    for (const answer::StratumAnswer& layer : soil.strata) {
        Depths d{best, {}, {}, {}};
        if (layer.best_m && std::isfinite(*layer.best_m)) {
            best += std::max(0.0, *layer.best_m);
            low += layer.low_m.value_or(*layer.best_m);
            high += layer.high_m.value_or(*layer.best_m);
            d.bottom = best;
            d.least = low;
            d.most = high;
        }
        all.push_back(d);
        if (!d.bottom) break;
    }
    return all;
}

void layer(const SoilColumn& column, const Depths& depths, std::size_t number, Items& items) {
    const double foot = column.depth.at(depths.bottom.value_or(column.depth.high));
    const Box box{column.left, column.depth.at(depths.top), column.right, foot};
    if (box.height() <= 0) return;
    items.emplace_back(Rect{box, filled(palette::soil)});
    append(items, hatched(box, signs[number % std::size(signs)]));
}

void end_of(const SoilColumn& column, const Depths& depths, Items& items) {
    if (!depths.bottom || *depths.bottom >= column.depth.high) return;
    const double y = column.depth.at(*depths.bottom);
    items.emplace_back(Line{{column.left, y}, {column.right, y}, stroked(palette::earth, 1.6)});
    const Point low{column.right - 7, column.depth.at(*depths.least)};
    const Point high{column.right - 7, column.depth.at(*depths.most)};
    if (high.y - low.y > 3) append(items, span_mark(low, high, 1));
}

void name(const SoilColumn& column, const Depths& depths, const std::string& words, Items& items) {
    const double top = column.depth.at(depths.top);
    const double foot = column.depth.at(depths.bottom.value_or(column.depth.high));
    const double left = column.left + (column.rod_m ? rod_inset + 7 : 5);
    const bool high = foot - top >= letters + 6;
    if (!high || left + text_width(words, letters) > column.right - 2) return;
    const double middle = std::min((top + foot) / 2, top + 30) + 0.36 * letters;
    items.emplace_back(haloed(text({left, middle}, words, {.size = letters}), palette::soil));
}

void rod(const SoilColumn& column, Items& items) {
    if (!column.rod_m) return;
    const double x = column.left + rod_inset;
    const double foot = column.depth.at(*column.rod_m);
    const double top = column.depth.at(0) - 5;
    items.emplace_back(
        Group{{Line{{x, top}, {x, foot}, stroked(palette::ink, 3.4)},
               Polygon{{{x - 1.7, foot}, {x + 1.7, foot}, {x, foot + 5}}, filled(palette::ink)}},
              {},
              "",
              "rod",
              "the rod"});
}

std::string thickness_words(const answer::StratumAnswer& layer) {
    if (!layer.best_m) return "down from there";
    const double low = layer.low_m.value_or(*layer.best_m);
    const double high = layer.high_m.value_or(*layer.best_m);
    const std::string best = metre_words(*layer.best_m) + " thick";
    return low < high ? fmt::format("{} ({})", best, range_words(low, high, "m")) : best;
}

std::string layer_words(const answer::StratumAnswer& layer, bool only) {
    std::string words = figure_words(layer.best_ohm_m) + " Ωm";
    if (layer.low_ohm_m < layer.high_ohm_m) {
        words += fmt::format(" ({})", range_words(layer.low_ohm_m, layer.high_ohm_m, "Ωm"));
    }
    return words + ", " + (only && !layer.best_m ? "all the way down" : thickness_words(layer));
}

}  // namespace

Items soil_column(const answer::SoilAnswer& soil, const SoilColumn& column) {
    const Box box{column.left, column.depth.at(0), column.right,
                  column.depth.at(column.depth.high)};
    Items items;
    const std::vector<Depths> depths = depths_of(soil);
    for (std::size_t i = 0; i < depths.size(); ++i) layer(column, depths[i], i, items);
    for (const Depths& one : depths) end_of(column, one, items);
    items.emplace_back(Rect{box, stroked(palette::graphite, weight::thin)});
    items.emplace_back(
        Line{{box.left - 3, box.top}, {box.right, box.top}, stroked(palette::earth, weight::firm)});
    for (std::size_t i = 0; i < depths.size(); ++i) {
        name(column, depths[i], figure_words(soil.strata[i].best_ohm_m) + " Ωm", items);
    }
    if (depths.empty()) {
        TextStyle style{.size = 16, .weight = Weight::bold, .anchor = Anchor::middle};
        style.colour = palette::graphite;
        items.emplace_back(text(box.centre() + Point{8, 0}, "?", style));
    }
    rod(column, items);
    return {Group{std::move(items), {}, "", "soil", "the soil"}};
}

std::vector<double> layer_ends(const answer::SoilAnswer& soil) {
    std::vector<double> ends;
    for (const Depths& depths : depths_of(soil)) {
        if (depths.bottom) ends.push_back(*depths.bottom);
    }
    return ends;
}

void soil_words(const answer::SoilAnswer& soil, parts::WordColumn& column) {
    column.heading("the soil");
    if (soil.strata.empty()) say(column, "Its layers are not known.");
    for (std::size_t i = 0; i < soil.strata.size(); ++i) {
        const Box patch{0, 2, sign_wide, 15};
        Items sign{Rect{patch, filled(palette::soil)}};
        append(sign, hatched(patch, signs[i % std::size(signs)]));
        say_signed(column, std::move(sign), layer_words(soil.strata[i], soil.strata.size() == 1),
                   "");
    }
    if (!soil.known_by.empty()) say_small(column, "known by: " + soil.known_by);
    if (!soil.says.empty()) say(column, soil.says);
}

}  // namespace toft::terrain
