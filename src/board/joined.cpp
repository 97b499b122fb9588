#include "board/joined.h"

#include "base/text.h"
#include "board/ink.h"
#include "board/wires.h"
#include "parts/cable_words.h"
#include "parts/fittings.h"
#include "parts/words.h"

#include <fmt/format.h>

#include <algorithm>

namespace toft::board {

namespace {

constexpr double words_size = 12;
constexpr double bar_wide = 10;
constexpr double words_in = 46;  // from the column's left edge

std::string electrode_words(const answer::ElectrodeAnswer& e) {
    return fmt::format("own earth electrode: {} rod{} of {} m, at most {} Ω, {}", e.rods,
                       e.rods == 1 ? "" : "s", significant(e.length_m, 3),
                       significant(e.largest_ohm, 3),
                       e.measured ? "measured" : "predicted: only a test proves it");
}

std::string armour_name(const answer::CableAnswer& cable) {
    return cable.parallel > 1 ? "armour of each of the run's cables" : "the run's armour";
}

/// Conductors of the run at the outbuilding that carry the house's earth.
void add_carried(const answer::CableAnswer& cable, std::vector<Joined>& list) {
    if (cable.armoured && cable.armour_far) list.push_back({armour_name(cable) + ", by the gland"});
    if (core_serves(cable)) {
        list.push_back(
            {"the run's earth core" + (cable.cpc_mm2 ? " " + mm2(*cable.cpc_mm2) : std::string())});
    }
    if (cable.separate_mm2) {
        list.push_back({"conductor beside the run's cable " + mm2(*cable.separate_mm2)});
    }
}

std::string bond_words(const picture::Part& part) {
    std::string what = part.what.substr(0, part.what.find_last_not_of(',') + 1);
    std::string words = "bond to the " + what + " " + mm2(part.bond->size_mm2);
    if (part.kind == picture::PartKind::not_surveyed) words += ", if it is there: not surveyed";
    return words;
}

/// "protective conductors of circuits 1 to 5".
std::string circuits_words(std::size_t ways) {
    if (ways < 2) return "protective conductor of the circuit";
    return fmt::format("protective conductors of circuits 1 to {}, in that order", ways);
}

std::string supply_earth_words(site::Earthing earthing) {
    switch (earthing) {
        case site::Earthing::tn_c_s:
            return "the supply's earth (TN-C-S): joined to its neutral at the cut-out";
        case site::Earthing::tn_s:
            return "the supply's earth (TN-S): its own conductor";
        case site::Earthing::tt:
            break;
    }
    return "the house's earth electrode (TT): no earth from the operator";
}

/// From the bar to the words: a wire, or one that ends short of the bar before a stop.
Items tap(Point at, bool joined) {
    if (joined) return earth_wire({at, at + Point{30, 0}});
    Items items = earth_wire({at + Point{18, 0}, at + Point{30, 0}});
    items.emplace_back(
        Line{at + Point{14, -6}, at + Point{14, 6}, stroked(palette::ink, weight::firm)});
    return {Group{std::move(items), {}, "", "not-joined", "joined to nothing"}};
}

}  // namespace

std::vector<Joined> far_joined(const picture::Stage& stage, const std::vector<Way>& ways) {
    const answer::CableAnswer& cable = stage.scheme->run.stretches.back();
    const bool stops = earth_stops(*stage.scheme);
    std::vector<Joined> list;
    if (stage.scheme->building.electrode) {
        list.push_back({electrode_words(*stage.scheme->building.electrode)});
    }
    if (!stops) add_carried(cable, list);
    for (const picture::Part& part : stage.parts) {
        if (part.bond) list.push_back({bond_words(part)});
    }
    list.push_back({circuits_words(ways.size())});
    if (cable.armoured && !cable.armour_far) {
        list.push_back({armour_name(cable) + ": insulated at the gland here", false});
    }
    if (stops && core_serves(cable)) {
        list.push_back({"the run's earth core: insulated here", false});
    }
    if (stops && cable.separate_mm2) {
        list.push_back({"conductor beside the run's cable: insulated here", false});
    }
    return list;
}

std::string near_end_words(const answer::RunAnswer& run) {
    return run.feeder.empty() ? "the house" : run.feeder;
}

std::vector<Joined> house_joined(const picture::Stage& stage) {
    const answer::CableAnswer& cable = stage.scheme->run.stretches.front();
    const std::string& feeder = stage.scheme->run.feeder;
    std::vector<Joined> list{{feeder.empty() ? supply_earth_words(stage.job->intake.earthing)
                                             : "the earth that " + feeder + " has"}};
    if (cable.armoured) {
        list.push_back(cable.armour_near
                           ? Joined{armour_name(cable) + ", by the gland"}
                           : Joined{armour_name(cable) + ": insulated at the gland here", false});
    }
    if (core_serves(cable)) {
        list.push_back(
            {"the run's earth core" + (cable.cpc_mm2 ? " " + mm2(*cable.cpc_mm2) : std::string())});
    }
    if (cable.separate_mm2) {
        list.push_back({"conductor beside the run's cable " + mm2(*cable.separate_mm2)});
    }
    return list;
}

std::string earth_source_words(const picture::Stage& stage) {
    const std::string& earthing = stage.scheme->building.earthing;
    const std::string near = near_end_words(stage.scheme->run);
    if (earthing == "own electrode") {
        return "Earthed by its own electrode. Nothing on the earth of " + near +
               " may be joined here.";
    }
    const std::string whose =
        (earthing == "shared electrode" ? "the electrode of " : "the earth of ") + near;
    return "Earthed by " + whose + ", which the run's " +
           stage.scheme->run.stretches.back().protective_conductor + " brings.";
}

int earth_screws(const std::vector<Joined>& joined, std::size_t ways) {
    const auto held =
        std::count_if(joined.begin(), joined.end(), [](const Joined& one) { return one.joined; });
    return static_cast<int>(held) - 1 + static_cast<int>(std::max<std::size_t>(1, ways));
}

void set_joined(const std::vector<Joined>& joined, WordColumn& column) {
    const double top = column.y();
    const double left = column.left();
    Items taps;
    double foot = top;
    for (const Joined& one : joined) {
        column.gap(4);
        const double y = column.y() + 0.62 * words_size;
        append(taps, tap({left + bar_wide, y}, one.joined));
        column.words((one.joined ? "" : "not joined: ") + one.words, {.size = words_size}, 5,
                     words_in);
        if (one.joined) foot = y + 7;
    }
    append(taps, terminal_bar({left, top, left + bar_wide, std::max(foot, top + 18)}));
    column.placed(std::move(taps), column.y());
}

}  // namespace toft::board
