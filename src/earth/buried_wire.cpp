#include "earth/buried_wire.h"

namespace toft::earth {

template <class L>
Estimate<L> buried_wire(L& ledger, const Name& name, const BuriedWire<L>& wire) {
    const auto x = ledger.let({"wire.x", "twice the depth over the length", name.part},
                              2.0 * wire.depth / wire.length);
    const auto y =
        ledger.let({"wire.y", "slant to the image above", name.part}, root(1.0 + squared(x)));
    const auto r = ledger.let(
        name, wire.resistivity / (2 * pi * wire.length) *
                  (ln(2.0 * wire.length / wire.radius) - 1.0 + ln((1.0 + y) / x) - y + x));
    const Metres a = plain(wire.radius);
    const bool on_top = plain(wire.depth) < 4.0 * a;
    const bool stout = plain(wire.length) < 100.0 * a;
    return {r, on_top ? Trust::unsafe : stout ? Trust::outside : Trust::within};
}

template <class L>
ValueIn<L, Metres> strip_radius(L& ledger, const Name& name, const ValueIn<L, Metres>& width,
                                const ValueIn<L, Metres>& thickness) {
    return ledger.let(name, (width + thickness) / 4.0);
}

template Estimate<Silent> buried_wire(Silent&, const Name&, const BuriedWire<Silent>&);
template Estimate<Recording> buried_wire(Recording&, const Name&, const BuriedWire<Recording>&);
template Metres strip_radius<Silent>(Silent&, const Name&, const Metres&, const Metres&);
template Traced<Metres> strip_radius<Recording>(Recording&, const Name&, const Traced<Metres>&,
                                                const Traced<Metres>&);

}  // namespace toft::earth
