#include "diagram/far_earth.h"

#include "diagram/feeder.h"
#include "diagram/wording.h"
#include "parts/fittings.h"
#include "parts/words.h"
#include "symbol/board.h"
#include "symbol/earth.h"

#include <fmt/format.h>

namespace toft::diagram {

namespace {

constexpr double earth_bar_at = 13;

std::string source_words(const picture::Stage& stage) {
    const std::string& earthing = stage.scheme->building.earthing;
    const std::string near = near_place(stage.scheme->run);
    if (earthing == "own electrode") return "earthed by its own electrode, not by " + near;
    const std::string whose = earthing == "shared electrode" && fed_from_building(stage)
                                  ? "the electrode of " + near
                              : earthing == "shared electrode" ? "the house's electrode"
                              : fed_from_building(stage)       ? "the earth of " + near
                                                               : "the house's earth";
    return "on " + whose + ", by the run's " +
           stage.scheme->run.stretches.back().protective_conductor;
}

std::string unbonded_words(const picture::Part& part) {
    const bool section = part.metal && part.metal->insulating_section == site::Answer::yes;
    return part.what + (section ? ": insulating section, no bond" : ": no bond asked for");
}

void terminal_row(const picture::Stage& stage, bool carried, Ladder& ladder) {
    Note note{"earth terminal of " + parts::name_or(stage.far->name, stage.far->id),
              {source_words(stage), "each circuit's protective conductor is joined here"}};
    for (const picture::Part& part : stage.parts) {
        if (!part.bond) note.lines.push_back(unbonded_words(part));
    }
    if (stage.parts.empty()) {
        note.lines.push_back(stage.far->metalwork_surveyed ? "no metal to bond"
                                                           : "metalwork not surveyed");
    }
    const Row row = ladder.row(note, 34);
    ladder.live(row.top, row.foot);
    const double y = row.top + earth_bar_at;
    if (carried) ladder.earth_to(y);
    ladder.earth_from(y);
    const Columns& c = ladder.columns();
    ladder.draw(protective_earth(ladder.on_earth(y) - Point{28, 0}, ladder.pen()));
    ladder.draw({Group{parts::terminal_bar({c.earth - 15, y - 4.5, c.earth + 15, y + 4.5}),
                       {},
                       "",
                       "far-terminal",
                       "earth terminal of the outbuilding"}});
}

void bond_row(const picture::Part& part, Ladder& ladder) {
    Note note{"bond to the " + part.what.substr(0, part.what.find_last_not_of(",") + 1)};
    if (part.kind == picture::PartKind::not_surveyed) {
        note.lines.push_back("not surveyed: if it is there");
    }
    note.figures = {{"copper", {}, parts::mm2(part.bond->size_mm2)},
                    {"at least", {}, parts::mm2(part.bond->required_mm2)}};
    const Row row = ladder.row(note, 34);
    ladder.live(row.top, row.foot);
    const double y = row.top + earth_bar_at;
    ladder.earth_to(y);
    const Point clamp{ladder.columns().earth + 24, y};
    ladder.protective({ladder.on_earth(y), clamp});
    ladder.draw({Group{bonded_metal(clamp, ladder.pen()), {}, "", "bond", part.what}});
}

void electrode_row(const answer::ElectrodeAnswer& e, Ladder& ladder) {
    Note note{"own earth electrode"};
    note.lines = {
        fmt::format("{} rod{} of {} m", e.rods, e.rods == 1 ? "" : "s", significant(e.length_m, 3)),
        e.measured ? "measured; test it again when built"
                   : "predicted from the soil: only a test proves it"};
    note.figures = {
        {"to earth, at most", drawing::symbol("R", "A"), significant(e.largest_ohm, 3) + " Ω"}};
    const Row row = ladder.row(note, 56);
    ladder.live(row.top, row.foot);
    const double top = row.top + 4;
    ladder.earth_to(top);
    ladder.draw(electrode(ladder.on_earth(top), 46, ladder.pen()));
}

}  // namespace

void draw_far_earth(const picture::Stage& stage, bool carried, Ladder& ladder) {
    ladder.use(pen_new());
    terminal_row(stage, carried, ladder);
    for (const picture::Part& part : stage.parts) {
        if (part.bond) bond_row(part, ladder);
    }
    if (stage.scheme->building.electrode) {
        electrode_row(*stage.scheme->building.electrode, ladder);
    }
}

}  // namespace toft::diagram
