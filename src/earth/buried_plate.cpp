#include "earth/buried_plate.h"

namespace toft::earth {

template <class L>
Estimate<L> buried_plate(L& ledger, const Name& name, const BuriedPlate<L>& plate) {
    const auto r = ledger.let({"plate.r", "radius of a round plate as large", name.part},
                              root(plate.width * plate.height / pi));
    const auto x = ledger.let({"plate.x", "that radius over twice the depth", name.part},
                              r / (2.0 * plate.depth));
    const bool flat = plate.lie == Lie::flat;
    const double second = flat ? -7.0 / 12 : 7.0 / 24;
    const double fourth = flat ? 33.0 / 40 : 99.0 / 320;
    const auto series = ledger.let({"plate.series", "effect of the surface", name.part},
                                   1.0 + second * squared(x) + fourth * squared(x) * squared(x));
    const auto resistance = ledger.let(
        name, plate.resistivity / (8.0 * r) + plate.resistivity / (8 * pi * plate.depth) * series);
    const Metres w = plain(plate.width);
    const Metres h = plain(plate.height);
    const bool squarish = w <= 2.0 * h && h <= 2.0 * w;
    const bool deep = plain(plate.depth) >= 1.4 * plain(r);
    return {resistance, squarish && deep ? Trust::within : Trust::outside};
}

template Estimate<Silent> buried_plate(Silent&, const Name&, const BuriedPlate<Silent>&);
template Estimate<Recording> buried_plate(Recording&, const Name&, const BuriedPlate<Recording>&);

}  // namespace toft::earth
