#include "curves/withstand.h"

#include "cable/fault_heat.h"
#include "curves/ink.h"
#include "drawing/label.h"
#include "drawing/measure.h"
#include "parts/words.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <numbers>

namespace toft::curves {

namespace {

constexpr double stroke = 2;

struct Conductor {
    const char* name;
    double energy = 0;
    double section = 0;
    std::vector<double> dash;
};

/// Keeps the weakest conductor of each name.
void keep(std::vector<Conductor>& all, Conductor one) {
    for (Conductor& known : all) {
        if (std::string_view(known.name) != one.name) continue;
        if (one.energy < known.energy) known = std::move(one);
        return;
    }
    all.push_back(std::move(one));
}

Conductor conductor(const char* name, const tables::FaultHeat& heat, SquareMillimetres section,
                    std::vector<double> dash) {
    Silent silent;
    const auto energy = cable::withstand(silent, {"k2S2", name}, heat.k.value, section);
    return {name, energy.number(), section.number(), std::move(dash)};
}

std::vector<Conductor> conductors(const tables::Catalogue& catalogue,
                                  const study::RunScheme& scheme) {
    std::vector<Conductor> all;
    for (const study::Stretch& stretch : scheme.laid()) {
        const tables::Make& make = tables::make_of(catalogue, *stretch.cable);
        keep(all, conductor("live core", make.live, stretch.cable->section, {}));
        if (study::core_serves(stretch.protective)) {
            keep(all, conductor("protective core", make.core, stretch.cable->cpc, {12, 4}));
        }
        if (study::separate_serves(stretch.protective)) {
            keep(all, conductor("separate conductor", catalogue.cable_constants.separate,
                                stretch.separate->section, {6, 3, 1, 3}));
        }
        if (stretch.armoured()) {
            keep(all, conductor("armour", make.armour, stretch.cable->armour_area.value, {3, 3}));
        }
    }
    std::stable_sort(all.begin(), all.end(),
                     [](const Conductor& a, const Conductor& b) { return a.energy < b.energy; });
    return all;
}

/// A line from 5 s down to where it leaves the paper.
std::pair<Point, Point> ends_of(const LogPaper& paper, double energy) {
    const double last = std::min(most_amperes, std::sqrt(energy / least_seconds));
    return {paper.at(std::sqrt(energy / adiabatic_seconds), adiabatic_seconds),
            paper.at(last, energy / (last * last))};
}

bool off_paper(double energy) {
    return std::sqrt(energy / adiabatic_seconds) >= most_amperes ||
           std::sqrt(energy / least_seconds) <= least_amperes;
}

/// The names along the line, so that those of lines close together keep apart: the weakest line's
/// on its left, the others' on their right, by turns near the head and farther down.
Text names_along(const Withstand& line, std::pair<Point, Point> ends, int number) {
    const bool farther_down = number > 0 && number % 2 == 0;
    const Point way = unit(ends.second - ends.first);
    const double room = distance(ends.first, ends.second);
    const double wide = text_width(line.names, letters);
    TextStyle style{.size = letters, .halo = palette::paper, .halo_width = 2.5};
    if (wide + 16 > room) {
        style.anchor = Anchor::end;
        return text(ends.first + Point{-6, farther_down ? 26.0 : 13.0}, line.names, style);
    }
    style.turn = std::atan2(way.y, way.x) * 180 / std::numbers::pi;
    const double start = farther_down ? std::min(0.35 * room, room - wide - 8) : 8;
    const Point aside = quarter_turned(way) * (number == 0 ? 13.0 : -5.0);
    return text(ends.first + way * start + aside, line.names, style);
}

/// Its letter over the line, each line's farther down than that of the one before.
Text letter_on(const std::string& letter, std::pair<Point, Point> ends, int number) {
    const TextStyle style{.size = 13,
                          .weight = Weight::bold,
                          .anchor = Anchor::middle,
                          .halo = palette::paper,
                          .halo_width = 3};
    const double share = 0.08 + 0.2 * (number % 4);
    return text(between(ends.first, ends.second, share) + Point{0, 4.5}, letter, style);
}

}  // namespace

std::vector<Withstand> withstands(const tables::Catalogue& catalogue,
                                  const study::RunScheme& scheme) {
    std::vector<Withstand> lines;
    double section = 0;
    for (Conductor& one : conductors(catalogue, scheme)) {
        if (!lines.empty() && one.energy <= 1.01 * lines.back().energy && one.section == section) {
            const std::string& before = lines.back().names;
            lines.back().names =
                fmt::format("{} and {}", before.substr(0, before.find(',')), one.name);
        } else {
            lines.push_back({one.name, one.energy, std::move(one.dash)});
        }
        section = one.section;
        lines.back().names += ", " + parts::mm2(section);
    }
    return lines;
}

std::string line_letter(std::size_t number) {
    return std::string(1, static_cast<char>('a' + std::min<std::size_t>(number, 25)));
}

Items withstand_lines(const LogPaper& paper, const std::vector<Withstand>& lines) {
    Items items;
    Items names;
    int number = 0;
    for (std::size_t i = 0; i < lines.size(); ++i) {
        const Withstand& line = lines[i];
        if (off_paper(line.energy)) continue;
        const auto ends = ends_of(paper, line.energy);
        items.emplace_back(
            Group{{Line{ends.first, ends.second, dashed(palette::accent, stroke, line.dash)}},
                  {},
                  "",
                  "withstand",
                  line.names});
        names.emplace_back(paper.tight() ? letter_on(line_letter(i), ends, number)
                                         : names_along(line, ends, number));
        ++number;
    }
    append(items, std::move(names));
    return items;
}

}  // namespace toft::curves
