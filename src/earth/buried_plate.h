#pragma once
// A plate buried in uniform soil, flat or on edge, as a round one of equal area (Dwight 1936):
//
//   flat:    R = rho/(8 r) + rho/(4 pi s) (1 - 7/12 (r/s)^2 + 33/40 (r/s)^4)
//   on edge: R = rho/(8 r) + rho/(4 pi s) (1 + 7/24 (r/s)^2 + 99/320 (r/s)^4)
//
// r = sqrt(A/pi), A one face; s = twice the depth of the centre. Within 1 % of a field solution for
// squares at 1 to 1.5 m; `within` for plates no longer than twice their width and centred at least
// 1.4 r deep. The form rho/4 sqrt(pi/A) of the standards reads 25 to 82 % higher.
// Page: docs/methods/buried-plate.md.

#include "earth/estimate.h"

namespace toft::earth {

enum class Lie { flat, on_edge };

template <class L>
struct BuriedPlate {
    ValueIn<L, OhmMetres> resistivity{};
    ValueIn<L, Metres> width{};
    ValueIn<L, Metres> height{};
    ValueIn<L, Metres> depth{};  ///< of the centre
    Lie lie = Lie::on_edge;
};

template <class L>
Estimate<L> buried_plate(L& ledger, const Name& name, const BuriedPlate<L>& plate);

}  // namespace toft::earth
