#pragma once
// A straight horizontal wire or strip buried in uniform soil (Dwight 1936, his series summed):
//
//   R = rho/(2 pi L) (ln(2 L/a) - 1 + asinh(L/2h) - sqrt(1 + (2h/L)^2) + 2h/L)
//
// a: radius of the wire; a strip of width w and thickness t counts as a wire of radius (w + t)/4.
// Within 1 % above a field solution for L at least 100 radii and h at least 4 radii. Laid on the
// surface the formula does not hold (`outside`; true resistance is higher, so `unsafe`).
// Page: docs/methods/buried-wire.md.

#include "earth/estimate.h"

namespace toft::earth {

template <class L>
struct BuriedWire {
    ValueIn<L, OhmMetres> resistivity{};
    ValueIn<L, Metres> length{};  ///< 1 to 100 m
    ValueIn<L, Metres> radius{};
    ValueIn<L, Metres> depth{};  ///< of the axis below the surface, 0.2 to 3 m
};

template <class L>
Estimate<L> buried_wire(L& ledger, const Name& name, const BuriedWire<L>& wire);

/// The radius of the round wire that does as much as a strip.
template <class L>
ValueIn<L, Metres> strip_radius(L& ledger, const Name& name, const ValueIn<L, Metres>& width,
                                const ValueIn<L, Metres>& thickness);

}  // namespace toft::earth
