#pragma once
// Impedance of a leg for voltage drop: the tabulated mV/A/m, its resistive part brought from the
// tabulated to the actual conductor temperature. BS 7671 Appendix 4, item 6.1, with the conductor
// temperature t = ta + (tp - ta)(Ib / (It F))2, which never falls below the surroundings.
// Page: docs/methods/voltage-drop.md.

#include "base/impedance.h"
#include "cable/rating.h"

namespace toft::cable {

template <class L>
struct LegDrop {
    ValueIn<L, Celsius> conductor{};  ///< working temperature of the conductor
    ImpedanceIn<L> loop{};            ///< line and neutral of the leg together
};

/// What the drop of one leg depends on besides the cable.
template <class L>
struct DropInput {
    ValueIn<L, Amperes> ib{};
    ValueIn<L, Celsius> surroundings{};  ///< temperature of air or ground
    ValueIn<L, Metres> length{};
    const LegFactors<L>* factors = nullptr;
    int leg = 1;
};

template <class L>
LegDrop<L> leg_drop(L& ledger, const tables::CableConstants& constants, const tables::Cable& cable,
                    const DropInput<L>& in);

}  // namespace toft::cable
