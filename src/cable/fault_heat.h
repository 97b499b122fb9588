#pragma once
// Heat of a fault in a conductor, adiabatic: it survives while I2t <= k2 S2. BS 7671 434.5.2 and
// 543.1.3, IEC 60364-5-54 Annex A. Valid up to 5 s. Page: docs/methods/fault-heat.md.

#include "base/ledger.h"
#include "tables/cable.h"

namespace toft::cable {

/// k2 S2: the I2t that brings a conductor of section `s` to its final temperature.
template <class L>
ValueIn<L, AmpereSquareSeconds> withstand(L& ledger, const Name& name,
                                          const ValueIn<L, HeatConstant>& k,
                                          const ValueIn<L, SquareMillimetres>& s);

/// k from first principles: K sqrt(ln((beta + tf)/(beta + ti))).
HeatConstant k_from_principles(double big_k, double beta, Celsius initial, Celsius final);

}  // namespace toft::cable
