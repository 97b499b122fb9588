#pragma once
// What a building asks for, line by line: today, likely with what is planned, or everything at
// once. Page: docs/methods/scenario.md.

#include "demand/circuit.h"
#include "demand/lines.h"

namespace toft::demand {

/// Whether the circuit counts: all but those planned for later count today.
bool counts(const site::Circuit& circuit, site::Scenario scenario);

/// Whether the survey says anything of what the building draws.
bool load_is_stated(const site::Building& building);

/// Whether its demand comes from its circuits, not from one figure for the whole.
bool by_circuits(const site::Building& building);

template <class L>
struct BuildingDemand {
    Lines<L> lines;                  ///< without the allowance for later
    ValueIn<L, Amperes> heaviest{};  ///< of them
    ValueIn<L, Amperes> neutral{};   ///< three lines: what they leave; one line: that of the line
    bool harmonics = false;          ///< some are stated, and there are three lines
    ValueIn<L, Amperes> third{};     ///< mean third harmonic of the three lines, where there are
    ValueIn<L, Amperes> later{};     ///< allowance for later; on every line
    ValueIn<L, Amperes> total{};     ///< heaviest and later together
};

/// Demand of a building of stated load. Allowances are made today and likely, not in everything;
/// circuits planned for later and the allowance for later count in likely and everything. A load
/// stated for the whole building is the same in each, spread evenly over the lines; circuits that
/// stay on for hours count whole.
template <class L>
BuildingDemand<L> building_demand(L& ledger, const Place<L>& place, const site::Building& building,
                                  site::Scenario scenario);

/// What the building's solar and battery circuits that count may send out on one line, those of a
/// single phase on the same one: the run must carry it, though it is no demand.
template <class L>
ValueIn<L, Amperes> sent_out(L& ledger, const Place<L>& place, const site::Building& building,
                             site::Scenario scenario);

}  // namespace toft::demand
