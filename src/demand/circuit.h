#pragma once
// The current of one circuit: from its watts, else the rating of its device, else the rating its
// kind usually has. Page: docs/methods/scenario.md.

#include "base/ledger.h"
#include "site/job.h"
#include "tables/demand.h"

namespace toft::demand {

/// Where demand is worked out: the tables, the voltage, the lines, and a word that tells the lines
/// of working from those of another place.
template <class L>
struct Place {
    const tables::Demand* tables = nullptr;
    ValueIn<L, Volts> u0{};
    int phases = 1;  ///< 1 or 3
    const char* of = "";
};

/// What a circuit's current was taken from.
enum class CurrentFrom { watts, device, usual, nothing };

CurrentFrom current_from(const tables::Demand& tables, const site::Circuit& circuit);

template <class L>
struct CircuitLoad {
    const site::Circuit* circuit = nullptr;
    const tables::LoadOfKind* kind = nullptr;
    ValueIn<L, Amperes> full{};     ///< in each line it uses, the load at work
    ValueIn<L, Amperes> lasting{};  ///< what heats a cable: full, but for a welder's duty
    ValueIn<L, Amperes> third{};    ///< third harmonic of `lasting`; 0 where none is stated
};

/// The current of the circuit of that number. A welder of stated duty has the effective current
/// I √duty. What gives current draws none; a battery draws its charging load where that is stated.
template <class L>
CircuitLoad<L> circuit_load(L& ledger, const Place<L>& place, const site::Circuit& circuit,
                            int number);

/// True for what can send current out: solar and batteries.
bool sends_out(const tables::Demand& tables, const site::Circuit& circuit);

/// What a circuit that sends out may send on each line it uses: its stated load, else the rating
/// of its device; 0 where neither is stated.
template <class L>
ValueIn<L, Amperes> output_current(L& ledger, const Place<L>& place, const site::Circuit& circuit,
                                   int number);

}  // namespace toft::demand
