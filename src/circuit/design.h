#pragma once
// A final circuit against what feeds it: which of its cables and devices is the smallest that does,
// and its figures. Each matter is judged by its use, the share of its limit; the rules word it.
// The smallest cable that does is the cheapest, since metres cost more with every section (a test
// holds the demo book to it). Page: docs/methods/final-circuit.md.

#include "circuit/setting.h"

namespace toft::circuit {

/// What a circuit is judged by.
enum class Matter : unsigned char {
    carries,     ///< Ib over In
    rating,      ///< In over Iz
    breaking,    ///< fault current at the board over breaking capacity
    drop,        ///< voltage lost from the origin to the last point
    disconnect,  ///< earth fault loop at the last point
    heat,        ///< fault heat over what is withstood
    start_trip,  ///< starting current over what the device is sure to hold
    start_dip,   ///< voltage taken by a starting motor
    rise         ///< voltage added by a source
};
inline constexpr std::size_t matters = 9;

template <class L>
struct Judged {
    bool applies = false;
    double value = 0;
    double limit = 0;
    ValueIn<L, double> use{};
};

template <class L>
struct CircuitDesign {
    std::size_t place = 0;  ///< in the building's list
    Option option;
    Metres wired;  ///< cable it takes: of a ring all the way round
    Conductors<L> conductors;
    std::array<Judged<L>, matters> judged;
    bool by_residual = false;  ///< only its residual current device clears an earth fault in time
    ValueIn<L, Ohms> zs{};     ///< at the last point, conductors at working temperature
    ValueIn<L, double> drop_own{};  ///< per cent, lost on the circuit itself

    const Judged<L>& at(Matter m) const { return judged[static_cast<std::size_t>(m)]; }
};

/// True where going over the limit is a caution: a start felt in the lights, a source that may be
/// throttled, a fault cleared by the residual current device alone.
bool only_cautioned(Matter matter, bool dip_wished);

/// Time in which an earth fault on the circuit has to clear on a system with a return conductor:
/// that of final circuits, or of distribution circuits where its device is beyond their scope.
const Cited<Seconds>& time_allowed(const tables::Limits& limits, const site::Circuit& circuit,
                                   Amperes rating);

/// Works out in `out` the smallest option that meets all; else the smallest that only falls to
/// cautions; else the one that comes nearest.
template <class L>
void design(L& ledger, const tables::Catalogue& catalogue, const CircuitSetting<L>& setting,
            const Feed<L>& feed, CircuitDesign<L>& out);

}  // namespace toft::circuit
