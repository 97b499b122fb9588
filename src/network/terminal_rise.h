#pragma once
// The lost neutral of one line with a resistive load, by hand, and the electrode that holds the
// earthing terminal to a voltage. The load is named by the current I it takes at U0, so Z = U0/I:
//
//   V = c U0 R / (R + U0/I)         R <= V U0 / (I (c U0 − V))       (form of BS 7671, A722)
//
// Three lines enter by the current that is left over for the neutral (equation A722.1). Error: none
// within the circuit; constant-power loads take more, see network/lost_neutral.h.
// Page: docs/methods/lost-neutral.md.

#include "base/ledger.h"
#include "base/units.h"

namespace toft::network {

template <class L>
struct FloatingSupply {
    ValueIn<L, Volts> u0{};   ///< nominal voltage to neutral
    ValueIn<L, double> c{};   ///< voltage factor of the source, 0.9 to 1.1
    ValueIn<L, Amperes> i{};  ///< load at U0, above 0; of three lines what A722.1 leaves of them
};

/// Paths R1 and R2 from the terminal to the ground, side by side.
template <class L>
ValueIn<L, Ohms> side_by_side(L& ledger, const Name& name, const ValueIn<L, Ohms>& r1,
                              const ValueIn<L, Ohms>& r2);

/// Volts of the terminal against true ground, with `earth` the resistance of all paths together.
template <class L>
ValueIn<L, Volts> terminal_rise(L& ledger, const Name& name, const FloatingSupply<L>& supply,
                                const ValueIn<L, Ohms>& earth);

/// The highest earth resistance at which the terminal keeps to `limit`; infinite where the source
/// itself has no more than that.
template <class L>
ValueIn<L, Ohms> electrode_for(L& ledger, const Name& name, const FloatingSupply<L>& supply,
                               const ValueIn<L, Volts>& limit);

/// What three lines of resistive load leave for the neutral.
template <class L>
ValueIn<L, Amperes> neutral_current(L& ledger, const Name& name, const ValueIn<L, Amperes>& i1,
                                    const ValueIn<L, Amperes>& i2, const ValueIn<L, Amperes>& i3);

}  // namespace toft::network
