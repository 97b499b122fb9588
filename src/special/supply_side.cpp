// Surges, arc faults, sources: what comes over the cable or goes back into it.

#include "base/limit.h"
#include "base/text.h"
#include "special/parts.h"

#include <fmt/format.h>

namespace toft::special {

namespace {

std::string length_words(const Case& c) {
    const double low = c.run_least.number();
    const double high = c.run_most.number();
    return low == high ? fmt::format("{} m", significant(high, 3))
                       : fmt::format("{} to {} m", significant(low, 3), significant(high, 3));
}

/// Of a run that another building feeds.
std::string behind(const Case& c) {
    const double reach = c.view.limits().surge_reach.value.number();
    if (within(c.run_most.number(), reach)) {
        return ": a device at the board that feeds it serves both boards, if that board has one";
    }
    if (within(c.run_least.number(), reach)) {
        return ": it may be too long for a device at the board that feeds it to serve this one: "
               "measure it, or fit one at each board";
    }
    return ": a device at the board that feeds it does not serve this one; it needs one of its own";
}

std::string second_board(const Case& c) {
    const double reach = c.view.limits().surge_reach.value.number();
    const std::string here = fmt::format("the run is {} of cable", length_words(c));
    if (!c.view.at_house) return here + behind(c);
    if (within(c.run_most.number(), reach)) {
        return here + ": one device at the house serves both boards, if the house has one";
    }
    if (within(c.run_least.number(), reach)) {
        return here +
               ": it may be too long for a device at the house to serve the outbuilding: "
               "measure it, or fit one at each board";
    }
    return here +
           ": a device at the house does not serve the outbuilding's board; it needs one "
           "of its own";
}

bool sockets_on_one_phase(const guard::View& view) {
    for (std::size_t i = 0; i < guard::circuit_count(view); ++i) {
        const site::Circuit& circuit = guard::circuit_at(view, i);
        if (guard::feeds_sockets(circuit) && circuit.phases == 1) return true;
    }
    return false;
}

}  // namespace

void surge(const Case& c, std::vector<Advice>& all) {
    all.push_back({"surge",
                   "surge protection where a surge could hurt someone or do grave loss; elsewhere "
                   "unless the owner says that the loss can be borne",
                   "the owner has not said so: plan for it, or have it in writing",
                   footing(c, "surge"), true});
    const std::string reach = significant(c.view.limits().surge_reach.value.number(), 3);
    all.push_back({"surge at the second board",
                   fmt::format("one surge protective device serves some {} m of cable", reach),
                   second_board(c), footing(c, "surge-second"), false});
    all.push_back({"leads of a surge device",
                   "leads as short as can be: each adds to the volts "
                   "that get through",
                   "set it beside the main switch, not at the far end of the board",
                   footing(c, "surge-leads"), false});
}

void arc_faults(const Case& c, std::vector<Advice>& all) {
    if (!sockets_on_one_phase(c.view)) return;
    const auto& made_of = c.view.building->construction;
    const bool burns = made_of == site::Construction::timber ||
                       c.view.building->spread_of_fire_risk == site::Answer::yes;
    all.push_back(
        {"arc faults",
         "arc fault detection for sockets on one phase in higher-risk residential buildings, "
         "houses in multiple occupation, student housing and care homes; recommended "
         "elsewhere",
         burns ? "asked for only if the house is one of those; wood or dust here speaks for it"
               : "asked for only if the house is one of those; worth a thought where "
                 "someone sleeps or a fire would go unseen",
         footing(c, "arc"), false});
}

void feeding_back(const Case& c, std::vector<Advice>& all) {
    if (!guard::has_kind(c.view, site::CircuitKind::solar) &&
        !guard::has_kind(c.view, site::CircuitKind::battery)) {
        return;
    }
    all.push_back({"current that flows back",
                   "devices through which current may flow either way must be made for that",
                   "choose breakers and RCDs marked for both directions, at the circuit and at the "
                   "head of the run; the operator must be told of the source",
                   footing(c, "direction"), true});
}

}  // namespace toft::special
