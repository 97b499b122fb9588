#pragma once
// A horizontal ring of wire buried in uniform soil (Dwight 1936):
//
//   R = rho/(2 pi^2 D) (ln(8 D/d) + ln(2 D/h))
//
// D diameter of the ring, d of the wire, h depth. 0.1 to 1 % above a field solution where D is at
// least 4 h; a square ring is near to a round one of equal area. A ring on the surface is `unsafe`
// (true resistance some 46 % higher). Page: docs/methods/buried-ring.md.

#include "earth/estimate.h"

namespace toft::earth {

template <class L>
struct BuriedRing {
    ValueIn<L, OhmMetres> resistivity{};
    ValueIn<L, Metres> diameter{};  ///< of the ring, centre to centre of the wire
    ValueIn<L, Metres> wire{};      ///< diameter of the wire
    ValueIn<L, Metres> depth{};     ///< of the wire's axis
};

template <class L>
Estimate<L> buried_ring(L& ledger, const Name& name, const BuriedRing<L>& ring);

}  // namespace toft::earth
