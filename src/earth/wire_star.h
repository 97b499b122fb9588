#pragma once
// Horizontal wires of equal length that leave one point in equal angles (two of them at a right
// angle), buried in uniform soil (Dwight 1936):
//
//   R = rho/(2 n pi l) (ln(2 l/a) + ln(2 l/s) + c0 + c1 x + c2 x^2 + c4 x^4),  s = 2 h, x = s/l
//
// Reads high: against a field solution +1 % with two arms, +2 % with three, +3.5 % with four, +7 %
// with six and +10 % with eight. For arms at least twice as long as they lie deep.
// Page: docs/methods/wire-star.md.

#include "earth/estimate.h"
#include "tables/electrode.h"

namespace toft::earth {

template <class L>
struct WireStar {
    ValueIn<L, OhmMetres> resistivity{};
    ValueIn<L, Metres> arm{};  ///< length of one arm
    ValueIn<L, Metres> radius{};
    ValueIn<L, Metres> depth{};
};

template <class L>
Estimate<L> wire_star(L& ledger, const Name& name, const tables::StarRow& row,
                      const WireStar<L>& star);

}  // namespace toft::earth
