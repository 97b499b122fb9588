#pragma once
// Two equal vertical rods in uniform soil and the ground beside one: mutual resistance and surface
// potential, exact for current that leaves the rod evenly along its length.
//
//   R12  = rho/(2 pi L) (asinh(2 L/s) - sqrt(1 + (s/2L)^2) + s/(2 L))   mean over the other rod
//   V(x) = rho I/(2 pi L) asinh(L/x)                                    at the surface
//
// Above a field solution, whose rods leak more at their tips: R12 by 3 % a quarter of a length
// apart, 1.3 % one length, less than 1 % two lengths; V by 5 % at 0.1 m from a 1.2 m rod, 1.4 % at
// 1 m, less beyond. Both tend to rho/(2 pi s). Dwight's two series of
// 1936 are expansions of R12. Page: docs/methods/rod-pair.md.

#include "earth/estimate.h"

namespace toft::earth {

template <class L>
struct RodPair {
    ValueIn<L, OhmMetres> resistivity{};
    ValueIn<L, Metres> length{};   ///< of each rod in the ground
    ValueIn<L, Metres> spacing{};  ///< between the axes; more than a diameter
};

/// The volts that one ampere into one rod puts on the other: R12.
template <class L>
ValueIn<L, Ohms> mutual_resistance(L& ledger, const Name& name, const RodPair<L>& rods);

/// The volts that one ampere into a rod puts on the surface `spacing` from its axis.
template <class L>
ValueIn<L, Ohms> surface_resistance(L& ledger, const Name& name, const RodPair<L>& rod);

}  // namespace toft::earth
