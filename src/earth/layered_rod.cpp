#include "earth/layered_rod.h"

namespace toft::earth {

namespace {

template <class L>
Trust trust_in(const LayeredRod<L>& rod) {
    if (plain(rod.lower) > plain(rod.upper)) return Trust::unsafe;
    const bool half_through = 2.0 * plain(rod.thickness) <= plain(rod.length);
    return half_through || plain(rod.lower) == plain(rod.upper) ? Trust::within : Trust::outside;
}

}  // namespace

template <class L>
Estimate<L> layered_rod(L& ledger, const Name& name, const LayeredRod<L>& rod) {
    const auto above = ledger.let({"rod.above", "length in the upper layer", name.part},
                                  least(rod.length, rod.thickness));
    const auto apparent =
        ledger.let({"rho.apparent", "resistivity the rod seems to see", name.part},
                   rod.length / (above / rod.upper + (rod.length - above) / rod.lower));
    const auto r = ledger.let(
        name, apparent / (2 * pi * rod.length) * (ln(8.0 * rod.length / rod.diameter) - 1.0));
    return {r, trust_in<L>(rod)};
}

template Estimate<Silent> layered_rod(Silent&, const Name&, const LayeredRod<Silent>&);
template Estimate<Recording> layered_rod(Recording&, const Name&, const LayeredRod<Recording>&);

}  // namespace toft::earth
