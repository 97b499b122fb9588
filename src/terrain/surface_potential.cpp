#include "terrain/surface_potential.h"

#include "terrain/figures.h"
#include "terrain/half_ball_map.h"
#include "terrain/ink.h"
#include "terrain/map_plot.h"
#include "terrain/sheet.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace toft::terrain {

namespace {

constexpr const char* rise_kind = "How far the ground rises with the house's earth";

std::string sentence(const answer::SeparationAnswer& s, const SurfaceMap& map) {
    if (!drawable(map.grid)) {
        return "How the ground round the house rises with its earth is not known: what it takes to "
               "work it out is missing.";
    }
    if (!std::isfinite(s.transferred_high)) {
        return "When the house's earth rises, so does the ground round it. How much of that "
               "reaches the outbuilding's electrode is not known.";
    }
    const bool joined = std::any_of(s.bridges.begin(), s.bridges.end(),
                                    [](const answer::BridgeAnswer& b) { return b.joins; });
    return fmt::format(
        "When the house's earth rises, the ground round it rises too: at the outbuilding's "
        "electrode by {} of it.{}",
        share_range_words(s.transferred_low, s.transferred_high),
        joined ? " But metal joins the two here, and carries over all of it." : "");
}

Items line_sign(const Style& style) { return {Line{{0, 10}, {sign_wide, 10}, style}}; }

void electrode_sign(const SurfaceThing& thing, parts::WordColumn& column) {
    Style ring = stroked(palette::ink, 1.6);
    ring.fill = palette::paper;
    const Point centre{sign_wide / 2, 9};
    say_signed(column, {Circle{centre, 6, ring}, Circle{centre, 2.6, filled(palette::ink)}},
               thing.name, "");
}

/// The levels on the map, those of one stroke together, the highest first.
void shares(const MapOf& of, parts::WordColumn& column) {
    std::vector<double> levels;
    for (const ContourLine& contour : of.map.contours) {
        if (!mark_at(of.job, of.fault, contour.level)) levels.push_back(contour.level);
    }
    std::sort(levels.rbegin(), levels.rend());
    for (std::size_t i = 0; i < levels.size();) {
        const Style style = contour_style(levels[i], false);
        std::string words;
        for (; i < levels.size() && contour_style(levels[i], false) == style; ++i) {
            words += (words.empty() ? "" : ", ") + share_words(levels[i]);
        }
        say_signed(column, line_sign(style), words, "");
    }
}

void marks(const MapOf& of, parts::WordColumn& column) {
    const double u0 = of.job.intake.u0.number();
    for (const double volts : of.fault.marks_v) {
        const double level = volts / u0;
        const bool on_map =
            std::any_of(of.map.contours.begin(), of.map.contours.end(),
                        [&](const ContourLine& c) { return std::fabs(c.level - level) < 1e-9; });
        say_signed(column, line_sign(contour_style(level, true)), figure_words(volts) + " V",
                   fmt::format("{} of a rise of {} V{}", share_words(level), figure_words(u0),
                               on_map ? "" : "; not on this map"));
    }
}

void explain(const MapOf& of, const answer::SeparationAnswer& s, parts::WordColumn& column) {
    column.heading("the lines");
    say(column,
        "Along each line the ground rises by the same share of what the house's earth "
        "rises by (100 %). The darker, the more.");
    shares(of, column);
    marks(of, column);
    column.heading("the signs");
    for (const SurfaceThing& thing : of.map.things) {
        if (thing.outline.size() == 1) electrode_sign(thing, column);
    }
    if (std::isfinite(s.needed_m) && s.needed_m > 0 && std::isfinite(s.distance_m)) {
        column.heading("how far is far enough");
        say(column, fmt::format("For the ground there to keep to the touch voltage when the "
                                "supply's neutral is lost, the electrode must be {} from metal on "
                                "the house's earth; it is {} from it.",
                                metre_words(s.needed_m), metre_words(s.distance_m)));
    }
    column.heading("what it rests on");
    if (!of.map.basis.empty()) say(column, of.map.basis);
    say(column,
        "A pipe, screen or fence that joins the two carries the whole rise past the ground "
        "between: no line here holds then.");
}

}  // namespace

Scene surface_potential_picture(const site::Job& job, const answer::GroundAnswer& ground,
                                std::size_t side, const SurfaceMap& map, double width) {
    if (side >= ground.sides.size()) return no_such_side(job, rise_kind, width);
    const answer::GroundSideAnswer& of = ground.sides[side];
    const MapOf drawn{job, of.lost_neutral, map};
    Content content{
        rise_kind, building_words(job, of.building), sentence(of.separation, map), {}, {}, {}};
    if (drawable(map.grid)) {
        content.draw = [&](const Space& room) { return map_plot(drawn, room); };
        content.explain = [&](parts::WordColumn& column) { explain(drawn, of.separation, column); };
    }
    return lay_out(job, content, width);
}

Scene surface_potential_picture(const site::Job& job, const answer::GroundAnswer& ground,
                                std::size_t side, double width) {
    if (side >= ground.sides.size()) return no_such_side(job, rise_kind, width);
    return surface_potential_picture(job, ground, side, half_ball_map(job, ground.sides[side]),
                                     width);
}

}  // namespace toft::terrain
