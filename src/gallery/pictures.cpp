#include "gallery/pictures.h"

#include "board/board.h"
#include "curves/curves.h"
#include "curves/pair.h"
#include "diagram/single_line.h"
#include "digging/route_plan.h"
#include "digging/trench_section.h"
#include "joins/joins.h"
#include "outage/dark.h"
#include "picture/place.h"
#include "picture/stage.h"
#include "swing/picture.h"
#include "terrain/lost_neutral.h"
#include "terrain/rod_length.h"
#include "terrain/separation_plan.h"
#include "terrain/sheet.h"
#include "terrain/surface_potential.h"

namespace toft::gallery {

namespace {

drawing::Scene place(const Subject& s) {
    return picture::place_picture(s.job, s.answer, s.scheme_index,
                                  s.width > 0 ? s.width : picture::sheet_wide);
}

drawing::Scene single_line(const Subject& s) {
    return diagram::single_line(s.job, s.answer, s.scheme_index,
                                s.width > 0 ? s.width : diagram::paper_wide);
}

drawing::Scene board(const Subject& s) {
    return board::board_picture(s.job, s.answer, s.scheme_index,
                                s.width > 0 ? s.width : board::paper_wide);
}

drawing::Scene conductors(const Subject& s) {
    return joins::conductors_picture(s.job, s.answer, s.scheme_index,
                                     s.width > 0 ? s.width : joins::paper_wide);
}

drawing::Scene curves(const Subject& s) {
    return curves::curves_picture(s.catalogue, s.job, s.answer, s.scheme_index,
                                  s.width > 0 ? s.width : curves::paper_wide);
}

drawing::Scene pair(const Subject& s) {
    return curves::pair_picture(
        {s.catalogue, s.job, s.answer, s.scheme_index, s.upstream, s.downstream},
        s.width > 0 ? s.width : curves::paper_wide);
}

drawing::Scene dark(const Subject& s) {
    return outage::dark_picture(s.job, s.answer, s.scheme_index,
                                s.width > 0 ? s.width : terrain::paper_wide);
}

const answer::GroundAnswer& ground_of(const Subject& s) {
    static const answer::GroundAnswer unknown = [] {
        answer::GroundAnswer bare;
        bare.sides.resize(1);
        return bare;
    }();
    return s.ground && !s.ground->sides.empty() ? *s.ground : unknown;
}

double ground_width(const Subject& s) { return s.width > 0 ? s.width : terrain::paper_wide; }

drawing::Scene rod_length(const Subject& s) {
    return terrain::rod_length_picture(s.job, ground_of(s), 0, ground_width(s));
}

drawing::Scene lost_neutral(const Subject& s) {
    return terrain::lost_neutral_picture(s.job, ground_of(s), 0, ground_width(s));
}

drawing::Scene separation(const Subject& s) {
    return terrain::separation_plan_picture(
        {s.job, ground_of(s), 0, s.catalogue.limits.reach.value}, ground_width(s));
}

drawing::Scene surface_potential(const Subject& s) {
    return terrain::surface_potential_picture(s.job, ground_of(s), 0, ground_width(s));
}

drawing::Scene tolerance(const Subject& s) {
    return swing::tolerance_picture(s.job, s.job.runs.front().to, s.tolerance, ground_width(s));
}

trench::Works works_of(const Subject& s) {
    const bool found = s.scheme_index < s.answer.schemes.size();
    return trench::works_of(
        {s.catalogue, s.job, found ? &s.answer.schemes[s.scheme_index] : nullptr});
}

digging::Measured route_to_scale(const Subject& s) {
    return digging::route_plan(works_of(s), {s.width, true});
}

drawing::Scene route(const Subject& s) { return route_to_scale(s).scene; }

digging::Measured trench_to_scale(const Subject& s) {
    return digging::trench_sheet(s.catalogue.trench, works_of(s), {s.width, true});
}

drawing::Scene trench(const Subject& s) { return trench_to_scale(s).scene; }

}  // namespace

const std::vector<Picture>& pictures() {
    static const std::vector<Picture> all = {
        {"place", "house, run, outbuilding and cable to scale", place},
        {.name = "single-line",
         .says = "supply, devices and circuits with their symbols",
         .draw = single_line,
         .from_building = true},
        {.name = "board",
         .says = "the outbuilding's board with its ways, as it will be fitted",
         .draw = board,
         .from_building = true},
        {.name = "conductors",
         .says = "every conductor of the run by its colour, and where the armour is joined",
         .draw = conductors,
         .from_building = true},
        {"curves", "how long its device takes and what the cable withstands", curves},
        {.name = "pair",
         .says = "two devices in series and which of them clears a fault",
         .draw = pair,
         .of_pair = true},
        {"dark", "what each fault leaves without supply", dark},
        {.name = "rod-length",
         .says = "what an earth rod reads by its length, through the year",
         .draw = rod_length,
         .of_ground = true},
        {.name = "separation",
         .says = "the house's earth and the outbuilding's electrode on a plan",
         .draw = separation,
         .of_ground = true},
        {.name = "lost-neutral",
         .says = "volts on the outbuilding's metal when the supply loses its neutral",
         .draw = lost_neutral,
         .of_ground = true},
        {.name = "surface-potential",
         .says = "how the house's earth lifts the ground around it",
         .draw = surface_potential,
         .of_ground = true},
        {.name = "tolerance",
         .says = "how sure the scheme is, and what moves its headroom",
         .draw = tolerance,
         .of_tolerance = true},
        {.name = "route",
         .says = "all runs on a plan to scale, for whoever digs",
         .draw = route,
         .to_scale = route_to_scale},
        {.name = "trench",
         .says = "each sort of trench cut through, to scale",
         .draw = trench,
         .to_scale = trench_to_scale},
    };
    return all;
}

const Picture* find_picture(std::string_view name) {
    for (const Picture& picture : pictures()) {
        if (name == picture.name) return &picture;
    }
    return nullptr;
}

}  // namespace toft::gallery
