#include "earth/rod_pair.h"

namespace toft::earth {

template <class L>
ValueIn<L, Ohms> mutual_resistance(L& ledger, const Name& name, const RodPair<L>& rods) {
    const auto x = ledger.let({"rods.x", "spacing over twice the length", name.part},
                              rods.spacing / (2.0 * rods.length));
    const auto y =
        ledger.let({"rods.y", "slant of the farthest ends", name.part}, root(1.0 + squared(x)));
    return ledger.let(name,
                      rods.resistivity / (2 * pi * rods.length) * (ln((1.0 + y) / x) - y + x));
}

template <class L>
ValueIn<L, Ohms> surface_resistance(L& ledger, const Name& name, const RodPair<L>& rod) {
    const auto x =
        ledger.let({"rod.x", "length over distance", name.part}, rod.length / rod.spacing);
    return ledger.let(name,
                      rod.resistivity / (2 * pi * rod.length) * ln(x + root(1.0 + squared(x))));
}

template Ohms mutual_resistance(Silent&, const Name&, const RodPair<Silent>&);
template Traced<Ohms> mutual_resistance(Recording&, const Name&, const RodPair<Recording>&);
template Ohms surface_resistance(Silent&, const Name&, const RodPair<Silent>&);
template Traced<Ohms> surface_resistance(Recording&, const Name&, const RodPair<Recording>&);

}  // namespace toft::earth
