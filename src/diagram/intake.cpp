#include "diagram/intake.h"

#include "diagram/wording.h"
#include "parts/fittings.h"
#include "parts/words.h"
#include "symbol/board.h"
#include "symbol/earth.h"
#include "symbol/fuse.h"
#include "symbol/meter.h"
#include "symbol/strokes.h"

namespace toft::diagram {

namespace {

using site::Earthing;

std::vector<Core> supply_cores(const site::Intake& in) {
    std::vector<Core> cores(static_cast<std::size_t>(in.phases), Core::line);
    cores.push_back(in.earthing == Earthing::tn_c_s ? Core::pen : Core::neutral);
    if (in.earthing == Earthing::tn_s) cores.push_back(Core::protective);
    return cores;
}

const char* earth_words(Earthing earthing) {
    switch (earthing) {
        case Earthing::tn_c_s:
            return "neutral and earth in one conductor (PEN)";
        case Earthing::tn_s:
            return "earth separate from the neutral: cable sheath or own conductor";
        case Earthing::tt:
            break;
    }
    return "no earth from the operator";
}

void supply_row(const site::Intake& in, Ladder& ladder) {
    Note note{"supply " + site::word(in.earthing) + ", " + supply_words(in),
              {earth_words(in.earthing)}};
    note.figures = {
        {"loop outside", drawing::symbol("Z", "e"), fact_words(in.ze, "Ω")},
        {in.phases == 3 ? "fault current, three lines" : "fault current, line to neutral",
         {},
         fact_words(in.pscc, "kA", 1e-3)},
        {"fault current, line to earth", {}, fact_words(in.pefc, "kA", 1e-3)},
    };
    if (in.ze_declared.known) {
        note.figures.insert(
            note.figures.begin() + 1,
            {"the operator's figure", drawing::symbol("Z", "e"), fact_words(in.ze_declared, "Ω")});
    }
    const std::vector<Core> cores = supply_cores(in);
    const double length = source_length + strokes_length(cores.size()) + 6;
    const Row row = ladder.row(note, length);
    const Axis axis{ladder.on_live(row.top), {0, 1}};
    ladder.draw(alternating_source(axis, ladder.pen()));
    ladder.live(row.top + source_length, row.foot);
    ladder.draw(strokes(axis.moved((source_length + length) / 2), cores, ladder.pen()));
    if (in.earthing != Earthing::tn_s) return;
    const double y = row.foot - 4;
    ladder.protective({ladder.on_live(y), ladder.on_earth(y)});
    ladder.draw(joint(ladder.on_live(y), ladder.pen()));
    ladder.earth_from(y);
}

void cut_out_row(const site::Intake& in, Ladder& ladder) {
    Note note{"operator's fuse (cut-out)"};
    note.lines = {in.service_fuse ? rating_words(in.service_fuse->standard, in.service_fuse->curve,
                                                 in.service_fuse->rating.number())
                                  : "rating not known"};
    if (in.looped != site::Answer::no) {
        note.lines.push_back(in.looped == site::Answer::yes
                                 ? "the supply is looped with a neighbour's"
                                 : "whether looped with a neighbour's supply: not known");
    }
    note.figures = {{"the house's demand", {}, fact_words(in.demand, "A")}};
    const bool link = in.earthing == Earthing::tn_c_s;
    if (link) note.lines.push_back("neutral and earth are joined here");
    constexpr double above = 14;
    const Row row =
        ladder.device(note, above + fuse_length + 4, [](const Axis& axis, const Style& pen) {
            Items items{Line{axis.point(0), axis.point(above), pen}};
            append(items, fuse(axis.moved(above), pen));
            items.emplace_back(
                Line{axis.point(above + fuse_length), axis.point(above + fuse_length + 4), pen});
            return items;
        });
    const double x = ladder.columns().live;
    ladder.draw_behind(enclosure({x - 22, row.top + 6, x + 26, row.top + 3 + above + fuse_length}));
    if (!link) return;
    const double y = row.top + 14;
    ladder.protective({ladder.on_live(y), ladder.on_earth(y)});
    ladder.draw({Group{joint(ladder.on_live(y), ladder.pen()),
                       {},
                       "",
                       "pen-link",
                       "neutral and earth joined in the cut-out"}});
    ladder.earth_from(y);
}

void meter_row(const site::Intake& in, Ladder& ladder) {
    Note note{"energy meter"};
    if (in.tails.known) {
        std::string tails = "tails " + fact_words(in.tails, "mm²");
        if (in.tails_length.known) tails += ", " + parts::length_words(in.tails_length);
        note.lines.push_back(tails);
    } else {
        note.lines.push_back("tails: size not known");
    }
    ladder.device(note, meter_length, energy_meter);
}

/// A terminal bar on the protective conductor's column, with the sign of protective earth.
void terminal(double y, Ladder& ladder) {
    const Point at = ladder.on_earth(y);
    ladder.draw({Group{parts::terminal_bar({at.x - 15, at.y - 4.5, at.x + 15, at.y + 4.5}),
                       {},
                       "",
                       "main-earthing-terminal",
                       "main earthing terminal"}});
}

void met_row(const picture::Stage& stage, Ladder& ladder) {
    const site::Intake& in = stage.job->intake;
    Note note{"main earthing terminal"};
    if (stage.scheme) {
        for (const std::string& work : stage.scheme->house_work) {
            note.lines.push_back("first: " + work);
        }
    }
    note.figures = {{"earthing conductor", {}, fact_words(in.earthing_conductor, "mm²")}};
    const Row row = ladder.row(note, 34);
    ladder.live(row.top, row.foot);
    const double y = row.top + 13;
    if (in.earthing != Earthing::tt) ladder.earth_to(y);
    ladder.earth_from(y);
    ladder.draw(protective_earth(ladder.on_earth(y) - Point{28, 0}, ladder.pen()));
    terminal(y, ladder);
    if (in.earthing != Earthing::tt) return;
    const Row rod_row =
        ladder.row({"the house's earth electrode",
                    {"the only earth of the house"},
                    {{"to earth", drawing::symbol("R", "A"), fact_words(in.electrode, "Ω")}}},
                   48);
    ladder.live(rod_row.top, rod_row.foot);
    const Point top{ladder.columns().earth + 11, y + 4};
    ladder.protective({top, {top.x, rod_row.top + 2}});
    ladder.draw(electrode({top.x, rod_row.top + 2}, 40, ladder.pen()));
}

const char* bonding_words(const site::Fact<SquareMillimetres>& bonding) {
    if (!bonding.known) return "whether it is there, and its size: look";
    if (bonding.high.number() == 0) return "none found at the house";
    return "to the pipes and metal that enter the house";
}

/// Drawn whole only where the survey saw it; dashed where nobody looked.
void house_bonding_row(const site::Intake& in, Ladder& ladder) {
    const site::Fact<SquareMillimetres>& bonding = in.main_bonding;
    const bool none = bonding.known && bonding.high.number() == 0;
    Note note{"main bonding of the house", {bonding_words(bonding)}};
    if (!none) note.figures = {{"copper", {}, fact_words(bonding, "mm²")}};
    const Row row = ladder.row(note, 30);
    ladder.live(row.top, row.foot);
    const double y = row.top + 13;
    ladder.earth_to(y);
    if (none) return;
    const Point clamp{ladder.columns().earth + 22, y};
    if (!bonding.known) {
        ladder.draw({Line{ladder.on_earth(y) + Point{4, 0}, clamp - Point{7, 0},
                          dashed(palette::ink, 1.1, {3, 3})}});
    } else {
        ladder.protective({ladder.on_earth(y), clamp});
    }
    ladder.draw(bonded_metal(clamp, ladder.pen()));
}

}  // namespace

void draw_intake(const picture::Stage& stage, Ladder& ladder) {
    const site::Intake& in = stage.job->intake;
    ladder.use(pen_existing());
    supply_row(in, ladder);
    cut_out_row(in, ladder);
    meter_row(in, ladder);
    met_row(stage, ladder);
    house_bonding_row(in, ladder);
}

}  // namespace toft::diagram
