#include "network/ways_to_earth.h"

#include <cmath>

namespace toft::network {

namespace {

template <class L>
OutbuildingEarth<L> house_alone(L& ledger, const TwoEarths<L>& e) {
    const auto house = ledger.let({"V.house", "earthing terminal of the house, lost neutral"},
                                  e.source * e.house / (e.house + e.load));
    const auto none = ledger.stated({"I.electrode", "electrode of the outbuilding"}, amperes(0),
                                    "not joined to the earth that is lifted");
    return {house, none, house};
}

template <class L>
OutbuildingEarth<L> both_joined(L& ledger, const TwoEarths<L>& e) {
    const auto mutual = ledger.let({"R12", "volts an ampere into one puts on the other"},
                                   least(least(e.transferred * e.house, e.house), e.outbuilding));
    const auto house_share = ledger.let({"R.1", "what the house has of its own"}, e.house - mutual);
    const auto other_share =
        ledger.let({"R.2", "what the outbuilding has of its own"}, e.outbuilding - mutual);
    // (R11 R22 − R12²)/(R11 + R22 − 2 R12), written so that nothing cancels.
    const auto loop = house_share + other_share;
    if (plain(loop) <= ohms(0)) return house_alone(ledger, e);
    const auto joined =
        ledger.let({"R.joined", "both together"}, mutual + house_share * other_share / loop);
    const auto metal = ledger.let({"V.house", "earthing terminal of the house, lost neutral"},
                                  e.source * joined / (joined + e.load));
    const auto electrode = ledger.let({"I.electrode", "electrode of the outbuilding"},
                                      e.source / (joined + e.load) * house_share / loop);
    return {metal, electrode, metal};
}

TwoEarths<Silent> worst(const EarthRanges& r) {
    TwoEarths<Silent> e = r.high;
    e.load = r.low.load;
    return e;
}

TwoEarths<Silent> best(const EarthRanges& r) {
    TwoEarths<Silent> e = r.low;
    e.load = r.high.load;
    return e;
}

/// The share at which the electrode's current is least: with a = R22/R11 + Z (R22 − R11)/R11²,
/// where 2 k − k² = a; between there and the ends it only rises.
double share_of_least_current(const TwoEarths<Silent>& e) {
    const double a =
        e.outbuilding / e.house + (e.load / e.house) * ((e.outbuilding - e.house) / e.house);
    return a >= 1 ? 1 : a <= 0 ? 0 : 1 - std::sqrt(1 - a);
}

double between(double x, double low, double high) { return least(most(x, low), high); }

}  // namespace

template <class L>
OutbuildingEarth<L> outbuilding_earth(L& ledger, WayToEarth way, const TwoEarths<L>& earths) {
    if (way == WayToEarth::carried_and_added) return both_joined(ledger, earths);
    auto found = house_alone(ledger, earths);
    if (way == WayToEarth::own) {
        found.metal =
            ledger.let({"V.metal", "metal of the outbuilding"}, earths.transferred * found.house);
    }
    return found;
}

OutbuildingRange outbuilding_range(WayToEarth way, const EarthRanges& ranges) {
    Silent ledger;
    const auto high = outbuilding_earth(ledger, way, worst(ranges));
    const auto low = outbuilding_earth(ledger, way, best(ranges));
    OutbuildingRange range{low.metal, high.metal, amperes(0), amperes(0)};
    if (way != WayToEarth::carried_and_added) return range;
    // The electrode carries more where it is better and the house's earth worse.
    const auto current = [&](TwoEarths<Silent> e, double share, const Ohms& outbuilding) {
        e.transferred = share;
        e.outbuilding = outbuilding;
        return outbuilding_earth(ledger, way, e).electrode;
    };
    const double from = ranges.low.transferred;
    const double to = ranges.high.transferred;
    const Ohms good = ranges.low.outbuilding;
    range.electrode_high =
        most(current(worst(ranges), from, good), current(worst(ranges), to, good));
    TwoEarths<Silent> mild = best(ranges);
    mild.outbuilding = ranges.high.outbuilding;
    const double dip = between(share_of_least_current(mild), from, to);
    range.electrode_low =
        least(current(mild, dip, mild.outbuilding),
              least(current(mild, from, mild.outbuilding), current(mild, to, mild.outbuilding)));
    return range;
}

template OutbuildingEarth<Silent> outbuilding_earth(Silent&, WayToEarth, const TwoEarths<Silent>&);
template OutbuildingEarth<Recording> outbuilding_earth(Recording&, WayToEarth,
                                                       const TwoEarths<Recording>&);

}  // namespace toft::network
