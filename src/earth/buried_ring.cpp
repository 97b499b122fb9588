#include "earth/buried_ring.h"

namespace toft::earth {

template <class L>
Estimate<L> buried_ring(L& ledger, const Name& name, const BuriedRing<L>& ring) {
    const auto r = ledger.let(
        name, ring.resistivity / (2 * pi * pi * ring.diameter) *
                  (ln(8.0 * ring.diameter / ring.wire) + ln(2.0 * ring.diameter / ring.depth)));
    const Metres depth = plain(ring.depth);
    const bool on_top = depth < 2.0 * plain(ring.wire);
    const bool fits =
        plain(ring.diameter) >= 4.0 * depth && plain(ring.diameter) >= 50.0 * plain(ring.wire);
    return {r, on_top ? Trust::unsafe : fits ? Trust::within : Trust::outside};
}

template Estimate<Silent> buried_ring(Silent&, const Name&, const BuriedRing<Silent>&);
template Estimate<Recording> buried_ring(Recording&, const Name&, const BuriedRing<Recording>&);

}  // namespace toft::earth
