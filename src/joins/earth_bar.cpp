#include "joins/earth_bar.h"

#include "base/text.h"
#include "joins/conductor.h"
#include "joins/ink.h"
#include "joins/stroke.h"
#include "joins/terminals.h"
#include "parts/cable_words.h"
#include "parts/fittings.h"
#include "parts/words.h"
#include "symbol/earth.h"
#include "symbol/pen.h"

#include <fmt/format.h>

namespace toft::joins {

namespace {

constexpr double letters = 12;
constexpr double bar_wide = 10;
constexpr double sign_at = 34;  // from the column's left edge
constexpr double tap_words = 56;

std::string cables_words(const Conductor& c) {
    return c.alike > 1 ? fmt::format("each of the run's {} cables", c.alike) : "the run's cable";
}

std::string run_words(const Conductor& c) {
    if (c.kind == Kind::armour) return "armour of " + cables_words(c) + ", by gland and tag";
    if (c.kind == Kind::separate) return "the run's conductor " + c.words;
    return "protective core of " + cables_words(c) + ", " + c.words;
}

std::string kept_words(const Conductor& c) {
    if (c.kind == Kind::armour)
        return "armour of " + cables_words(c) +
               ": insulated at the gland, and kept off any metal box that stands on this earth";
    if (c.kind == Kind::separate) return "the run's conductor laid beside the cable: capped";
    return "protective core of " + cables_words(c) + ": capped";
}

void add_run(const std::vector<Conductor>& conductors, Side side, bool joined,
             std::vector<Tap>& taps) {
    for (const Conductor& c : conductors) {
        if (!c.earth()) continue;
        const bool is = (side == Side::near ? c.near : c.far) == Ending::joined;
        if (is != joined) continue;
        taps.push_back(joined ? Tap{LeadsTo::run, run_words(c)}
                              : Tap{LeadsTo::nothing, kept_words(c)});
    }
}

std::string supply_words(const picture::Stage& stage) {
    if (!stage.scheme->run.feeder.empty()) {
        return "earth of the board of " + stage.scheme->run.feeder +
               ": from where, the sheet of its own run tells";
    }
    switch (stage.job->intake.earthing) {
        case site::Earthing::tn_c_s:
            return "the supply's earth (TN-C-S), which the operator joins to the neutral at the "
                   "cut-out";
        case site::Earthing::tn_s:
            return "the supply's earth (TN-S), a conductor of its own";
        case site::Earthing::tt:
            break;
    }
    return "the house's own earth electrode (TT): the operator gives no earth";
}

std::string electrode_words(const answer::ElectrodeAnswer& e) {
    return fmt::format(
        "own earth electrode by its earthing conductor: {} rod{} of {} m, at most {} Ω ({}); its "
        "test point stays within reach",
        e.rods, e.rods == 1 ? "" : "s", significant(e.length_m, 3), significant(e.largest_ohm, 3),
        e.measured ? "measured; test again" : "predicted: only a test proves it");
}

std::string plain(const std::string& what) {
    return what.substr(0, what.find_last_not_of(',') + 1);
}

std::string bond_words(const picture::Part& part) {
    std::string words =
        "main bond to the " + plain(part.what) + ", " + parts::mm2(part.bond->size_mm2) + " copper";
    if (part.kind == picture::PartKind::not_surveyed) words += ", if it is there: not surveyed";
    return words;
}

/// What the lead ends on, right of the bar.
Items sign(LeadsTo to, Point at) {
    using symbol::pen_new;
    switch (to) {
        case LeadsTo::source:
            return symbol::protective_earth(at + Point{4, 0}, pen_new());
        case LeadsTo::metal:
            return {Group{symbol::bonded_metal(at + Point{6, 0}, pen_new()), {}, "", "bond", ""}};
        case LeadsTo::electrode:
            return {Group{symbol::electrode(at, 34, pen_new()), {}, "", "rod", "earth electrode"}};
        case LeadsTo::run:
        case LeadsTo::circuits:
            return {Polygon{{at + Point{0, -4}, at + Point{8, 0}, at + Point{0, 4}},
                            filled(palette::ink)}};
        case LeadsTo::nothing:
            break;
    }
    return {};
}

Items tap_items(LeadsTo to, Point bar) {
    if (to != LeadsTo::nothing) {
        Items items = lead({bar, bar + Point{sign_at - bar_wide, 0}});
        append(items, sign(to, bar + Point{sign_at - bar_wide, 0}));
        return items;
    }
    Items items = lead({bar + Point{18, 0}, bar + Point{sign_at, 0}});
    append(items, capped(bar + Point{16, 0}, -1));
    return {Group{std::move(items), {}, "", "not-joined", "joined to nothing"}};
}

}  // namespace

std::vector<Tap> near_taps(const picture::Stage& stage) {
    const std::vector<Conductor> conductors = conductors_of(*stage.scheme, 0);
    const bool rod =
        stage.scheme->run.feeder.empty() && stage.job->intake.earthing == site::Earthing::tt;
    std::vector<Tap> taps{{rod ? LeadsTo::electrode : LeadsTo::source, supply_words(stage)}};
    add_run(conductors, Side::near, true, taps);
    add_run(conductors, Side::near, false, taps);
    return taps;
}

std::vector<Tap> far_taps(const picture::Stage& stage) {
    const std::vector<Conductor> conductors =
        conductors_of(*stage.scheme, stage.scheme->run.stretches.size() - 1);
    std::vector<Tap> taps;
    if (stage.scheme->building.electrode) {
        taps.push_back({LeadsTo::electrode, electrode_words(*stage.scheme->building.electrode)});
    }
    add_run(conductors, Side::far, true, taps);
    for (const picture::Part& part : stage.parts) {
        if (part.bond) taps.push_back({LeadsTo::metal, bond_words(part)});
    }
    taps.push_back({LeadsTo::circuits, "protective conductor of every circuit"});
    add_run(conductors, Side::far, false, taps);
    return taps;
}

std::vector<std::string> unbonded_words(const picture::Stage& stage) {
    std::vector<std::string> words;
    for (const picture::Part& part : stage.parts) {
        if (part.bond) continue;
        const bool section = part.metal && part.metal->insulating_section == site::Answer::yes;
        words.push_back("No bond to the " + plain(part.what) + ": " +
                        (section      ? "it has an insulating section."
                         : part.metal ? "none is asked for."
                                      : "it is taken not to touch the ground; look at feet and "
                                        "anchors, and join it to the earth bar where wiring or "
                                        "a fitting is fixed to its metal."));
    }
    if (stage.parts.empty() && !stage.far->metalwork_surveyed) {
        words.push_back("Metalwork was not surveyed: look for pipes and frames before you close.");
    }
    return words;
}

std::string source_words(const picture::Stage& stage) {
    const std::string& earthing = stage.scheme->building.earthing;
    const bool house = stage.scheme->run.feeder.empty();
    if (earthing == "own electrode") {
        return std::string("Earthed by its own electrode. Nothing on the earth of ") +
               near_name(stage) + " may be joined here.";
    }
    const std::string whose = !house                           ? "the earth of " + near_name(stage)
                              : earthing == "shared electrode" ? "the house's electrode"
                                                               : "the house's earth";
    const std::string& by = stage.scheme->run.stretches.back().protective_conductor;
    const bool both = by.find(" and ") != std::string::npos;
    return "Earthed by " + whose + ", which the run's " + by + (both ? " bring." : " brings.");
}

void set_taps(const std::vector<Tap>& taps, WordColumn& column) {
    const double top = column.y() + 2;
    const double left = column.left();
    Items items;
    double foot = top + 18;
    double least = top;
    for (const Tap& tap : taps) {
        column.gap(7);
        const double y = column.y() + 0.62 * letters;
        append(items, tap_items(tap.to, {left + bar_wide, y}));
        column.words((tap.to == LeadsTo::nothing ? "NOT joined: " : "") + tap.words,
                     {.size = letters}, 6, tap_words);
        if (tap.to != LeadsTo::nothing) foot = y + 8;
        least = y + (tap.to == LeadsTo::electrode ? 40 : 14);
        column.gap(std::max(0.0, least - column.y()));
    }
    items.emplace_back(Group{terminal_bar({left, top, left + bar_wide, foot}), {}, "", "bar", ""});
    column.placed(std::move(items), column.y() + 2);
}

}  // namespace toft::joins
