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
    ImpedanceIn<L> loop{};            ///< what the current of a line meets, there and back
};

/// The cable of a leg and what it carries.
template <class L>
struct DropInput {
    const tables::CableConstants& constants;
    const tables::Make& make;
    const tables::Duty& duty;
    const LegFactors<L>& factors;
    int phases = 1;
    ValueIn<L, Amperes> ib{};            ///< that heats one cable, in one line
    ValueIn<L, double> neutral_share{};  ///< current of the neutral over that of the line, 0 to 3;
                                         ///< three phases only
    ValueIn<L, Celsius> surroundings{};  ///< temperature of air or ground
    ValueIn<L, Metres> length{};
    int leg = 1;
};

/// Drop of one leg of one cable. Three loaded cores are tabulated line to line: each is the root of
/// three less. Without a tabulated rating the conductor is taken at its highest temperature;
/// without a tabulated drop no voltage is left.
template <class L>
LegDrop<L> leg_drop(L& ledger, const DropInput<L>& in);

}  // namespace toft::cable
