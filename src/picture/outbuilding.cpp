#include "picture/outbuilding.h"

#include "base/text.h"
#include "drawing/hatch.h"
#include "drawing/measure.h"
#include "parts/cable_words.h"
#include "parts/device_words.h"
#include "parts/fittings.h"
#include "parts/texture.h"
#include "parts/words.h"
#include "picture/house.h"
#include "picture/ink.h"
#include "picture/metalwork.h"

#include <fmt/format.h>

#include <algorithm>

namespace toft::picture {

namespace {

constexpr double wall_wide = 9;
constexpr int most_ways = 8;

Board far_board(const Stage& s) {
    const int circuits =
        static_cast<int>(std::clamp<std::size_t>(s.far->circuits.size(), 1, most_ways));
    Board board{.box = {s.route.end + 24, s.indoors() - 22, s.route.end + 96, s.indoors() + 22}};
    board.ways = circuits;
    if (!s.scheme || s.scheme->run.phases != 3) return board;
    for (std::size_t i = 0; i < static_cast<std::size_t>(circuits); ++i) {
        board.poles.push_back(i < s.far->circuits.size() ? s.far->circuits[i].phases : 1);
    }
    return board;
}

Box far_terminal_box(const Stage& s) {
    const double x = s.route.end + 60;
    return {x, s.ground - 62, x + 8, s.ground - 30};
}

/// Walls that reach into the ground, a slab on it, or a question.
void draw_footing(const Stage& s, Sketch& sketch) {
    const Box& box = s.far_box;
    if (s.far->stands_in_ground == site::Answer::yes) {
        for (const double x : {box.left, box.right - wall_wide}) {
            const Box foot = box_at({x, box.bottom}, wall_wide, 30);
            Style cut = stroked(palette::ink, weight::firm);
            cut.fill = palette::stone;
            sketch.put(Rect{foot, cut});
            sketch.draw(hatched(foot, masonry));
        }
        return;
    }
    if (s.far->stands_in_ground == site::Answer::no) {
        const Box slab{box.left - 6, box.bottom - 3, box.right + 6, box.bottom + 7};
        Style cut = stroked(palette::ink, weight::thin);
        cut.fill = palette::stone;
        sketch.put(Rect{slab, cut});
        sketch.draw(hatched(slab, concrete));
        return;
    }
    if (!s.far->construction || !site::metallic(*s.far->construction)) return;
    for (const double x : {box.left, box.right - wall_wide}) {
        sketch.put(Rect{box_at({x, box.bottom}, wall_wide, 30),
                        dashed(palette::ink, weight::thin, {4, 3})});
    }
    sketch.callouts.push_back(note({box.left + 4, box.bottom + 24}, "in the ground?",
                                   {"not known whether the metal stands in it"}));
}

void note_board(const Stage& s, Sketch& sketch) {
    const Board board = far_board(s);
    const std::string head = name_or(s.far->name, s.far->id) + ": board";
    std::vector<std::string> more;
    if (!s.scheme) {
        sketch.callouts.push_back(note(board.box.centre(), head, more));
        return;
    }
    const std::string phases = s.scheme->run.phases == 3 ? "three-phase, " : "";
    more.push_back(
        phases + "main switch " +
        s.scheme->building.main_switch.substr(0, s.scheme->building.main_switch.find(',')));
    for (const answer::RcdAnswer& rcd : s.scheme->building.rcds) {
        std::string covers;
        for (const std::string& name : rcd.covers) covers += (covers.empty() ? "" : ", ") + name;
        more.push_back(rcd_words(rcd) + " at each way: " + covers);
    }
    sketch.callouts.insert(sketch.callouts.begin(),
                           note(board.box.centre() - Point{0, 22}, capital(head), more));
}

void draw_electrode(const Stage& s, Sketch& sketch) {
    const answer::ElectrodeAnswer& electrode = *s.scheme->building.electrode;
    const Box bar = far_terminal_box(s);
    const int count = std::clamp(electrode.rods, 1, 4);
    const double first = s.far_box.right + 30;
    const double top = s.ground + 12;
    const double last = first + 22 * (count - 1);
    const std::vector<Point> wire{
        {bar.left + 4, bar.bottom}, {bar.left + 4, top + 4}, {last, top + 4}};
    sketch.draw(protective_line(wire));
    sketch.keep_line(wire, 3);
    for (int i = 0; i < count; ++i) {
        sketch.thing(rod({first + 22 * i, top}, 116), "rod", "the building's own earth rod");
    }
    const std::string rods =
        fmt::format("{} rod{} of {} m", electrode.rods, electrode.rods == 1 ? "" : "s",
                    significant(electrode.length_m, 3));
    const std::string ohms = fmt::format(
        "{} {} Ω, {}", electrode.measured ? "measured" : "at most",
        significant(electrode.largest_ohm, 3),
        electrode.measured ? "test it again when built" : "predicted from the soil: test it");
    sketch.callouts.insert(sketch.callouts.begin(),
                           note({first, top + 70}, "own electrode", {rods, ohms}));
}

void note_earth(const Stage& s, Sketch& sketch) {
    const Box bar = far_terminal_box(s);
    std::vector<std::string> more;
    if (!s.scheme) return;
    const std::string& earthing = s.scheme->building.earthing;
    const answer::StretchAnswer& last = s.scheme->run.stretches.back();
    if (earth_stops(*s.scheme)) {
        more.push_back(std::string("joined to its own electrode, not to the run's ") +
                       (last.armoured ? "armour" : "protective core"));
    } else {
        more.push_back(std::string(earthing == "shared electrode" ? "the house's electrode"
                                                                  : "the supply's earth") +
                       " by the run's " + last.protective_conductor);
    }
    sketch.callouts.push_back(note({bar.left, bar.bottom - 4}, "earth terminal", more));
}

}  // namespace

void draw_outbuilding_shell(const Stage& s, Sketch& sketch) {
    const Box& box = s.far_box;
    const bool flat = s.far->construction == site::Construction::steel_container;
    const double rise = flat ? 0 : 48;
    sketch.draw(building_shell(box, wall_wide, rise));
    if (s.far->construction) {
        sketch.draw(wall_texture(*s.far->construction, {box.left + wall_wide, box.top,
                                                        box.right - wall_wide, box.bottom}));
    }
    sketch.keep_line(roof_line(box, rise), 3);
    sketch.keep({box.left, box.top - 1, box.right, box.top + 1});
    sketch.thing({Item(building_name(name_or(s.far->name, s.far->id), box, rise))}, "name", "");
    sketch.keep({box.left, box.top - 2, box.left + wall_wide, box.bottom});
    sketch.keep({box.right - wall_wide, box.top - 2, box.right, box.bottom});
    draw_footing(s, sketch);
}

void draw_outbuilding_fittings(const Stage& s, Sketch& sketch) {
    const Board board = far_board(s);
    const Box bar = far_terminal_box(s);
    const std::vector<Point> link{{bar.left + 4, board.box.bottom}, {bar.left + 4, bar.top}};
    sketch.draw(protective_line(link));
    sketch.keep_line(link, 3);
    if (s.own_electrode()) draw_electrode(s, sketch);
    draw_metalwork(s, {bar.right, bar.centre().y}, s.route.end + 124, sketch);
    sketch.thing(terminal_bar(bar), "far-terminal", "the outbuilding's earth terminal");
    sketch.thing(board_items(board), "board", "the outbuilding's board");
    note_board(s, sketch);
    note_earth(s, sketch);
    const bool told =
        !s.parts.empty() && s.far->construction && site::metallic(*s.far->construction);
    const std::string made =
        s.far->construction ? site::word(*s.far->construction) : "construction not known";
    const Point corner{s.far_box.right - 4, s.far_box.top + 20};
    if (!told) sketch.callouts.push_back(note(corner, made));
    if (!s.far->metalwork_surveyed && !s.scheme) {
        sketch.callouts.push_back(
            note({s.route.end + 130, s.ground + 40}, "metalwork not surveyed"));
    }
}

}  // namespace toft::picture
