#include "base/pi.h"
#include "study/setting_parts.h"
#include "study/soil.h"

namespace toft::study {

namespace {

/// Current that a lost neutral would have carried: what house and outbuilding draw, else what the
/// operator's fuse passes.
template <class L>
ValueIn<L, Amperes> returning(L& ledger, const Setting<L>& s) {
    const Name name{"I.neutral", "current that would seek the ground"};
    const site::Fact<Amperes>& demand = s.job->intake.demand;
    if (!demand.known) {
        return ledger.stated(name, s.house.service_fuse_most, "the operator's fuse");
    }
    const auto house = ledger.stated({"I.house", "demand of the house"}, demand.high,
                                     site::standing_word(demand.standing));
    return ledger.let(name, house + s.ib);
}

constexpr double two_thirds = 2.0 / 3;

/// What bears on how far the house's earth lifts the ground round an electrode. With its neutral
/// lost and an earth of R the house rises by U0 R/(R + Z); a share of 1/root(1 + (gap R/a)^2) of
/// that reaches ground `gap` from its nearest metal, a = rho/2 pi. That share is no less than that
/// of rods, rings, meshes and pipes solved as fields (tests).
template <class L>
struct Neighbours {
    ValueIn<L, Volts> u0{};
    ValueIn<L, Ohms> load{};    ///< Z, that would seek the ground
    ValueIn<L, OhmMetres> a{};  ///< resistivity over 2 pi
    bool known = false;         ///< the house's earth is
    ValueIn<L, Ohms> low{}, high{};

    /// Within what the house's earth may be.
    ValueIn<L, Ohms> clipped(const ValueIn<L, Ohms>& worst) const {
        return known ? most(low, least(high, worst)) : worst * 1.0;
    }
};

template <class L>
Neighbours<L> neighbours(L& ledger, const Setting<L>& s, const SoilSetting& soil) {
    Neighbours<L> n;
    n.u0 = s.supply.u0;
    const auto rho = ledger.stated({"rho.gap", "resistivity of the ground between"},
                                   largest_in(soil), soil.from);
    n.a = ledger.let({"rho.2pi", "its share in the rise of a half ball"}, rho / (2 * pi));
    n.load = ledger.let({"Z.load", "load that would seek the ground"}, n.u0 / s.building.returning);
    const site::Fact<Ohms>& earth = s.job->intake.earth_without_neutral;
    n.known = earth.known;
    if (!n.known) return n;
    const char* from = site::standing_word(earth.standing);
    n.low = ledger.stated({"RE.low", "house's earth, the least it may be"}, earth.low, from);
    n.high = ledger.stated({"RE.high", "house's earth, the most it may be"}, earth.high, from);
    return n;
}

/// Rise of the ground at `gap`, for the house's earth that lifts it most: R = Z/x^(2/3) with
/// x = Z gap/a, or the end of its range that is nearest to that.
template <class L>
ValueIn<L, Volts> lift(L& ledger, const Neighbours<L>& n, const ValueIn<L, Metres>& gap) {
    const Name name{"U.lift", "rise of the ground at the electrode, the neutral lost"};
    const auto x =
        ledger.let({"gap.x", "the gap in half balls of the load's ohms"}, n.load * gap / n.a);
    if (!n.known) return ledger.let(name, n.u0 / power(1.0 + power(x, two_thirds), 1.5));
    const auto worst =
        plain(gap) > Metres{} ? n.clipped(n.load / power(x, two_thirds)) : n.high * 1.0;
    const auto re = ledger.let({"RE.lift", "house's earth that lifts that ground most"}, worst);
    return ledger.let(name, n.u0 * (re / (re + n.load)) / root(1.0 + squared(gap * re / n.a)));
}

/// Distance at which the ground keeps to the touch voltage, whatever the house's earth.
template <class L>
ValueIn<L, Metres> needed(L& ledger, const Neighbours<L>& n, const ValueIn<L, Volts>& touch) {
    const auto re = ledger.let({"RE.far", "house's earth that lifts ground farthest"},
                               n.clipped(n.load / (power(n.u0 / touch, two_thirds) - 1.0)));
    const auto rise = ledger.let({"rise.far", "its rise over the touch voltage"},
                                 n.u0 * re / ((re + n.load) * touch));
    return ledger.let({"gap.needed", "distance wanted"},
                      n.a / re * root(most(squared(rise) - 1.0, 0.0)));
}

}  // namespace

template <class L>
void prepare_separation(L& ledger, Settler& settler, Setting<L>& s, const SoilSetting& soil,
                        const std::string& at) {
    BuildingSetting<L>& b = s.building;
    if (!b.gap_judged) return;
    b.returning = returning(ledger, s);
    const site::Fact<Metres>& stated = s.building_facts->electrode.from_house_earth;
    const Name gap{"gap", "from the electrode to buried metal on the house's earth"};
    if (stated.known) {
        const auto settled = settler.settle(
            stated, {at + "/electrode/from_house_earth_m",
                     "distance from the electrode to buried metal on the house's earth", "reach"});
        b.gap_least = ledger.stated(gap, settled.bounds.least, settled.from);
    } else {
        b.gap_least = ledger.let(gap, b.reach_least * 1.0);
    }
    const auto touch =
        ledger.table({"U.touch", "touch voltage allowed"}, s.catalogue->limits.touch_voltage);
    const Neighbours<L> n = neighbours(ledger, s, soil);
    b.lift_most = lift(ledger, n, b.gap_least);
    b.gap_needed = needed(ledger, n, touch);
}

template void prepare_separation(Silent&, Settler&, Setting<Silent>&, const SoilSetting&,
                                 const std::string&);
template void prepare_separation(Recording&, Settler&, Setting<Recording>&, const SoilSetting&,
                                 const std::string&);

}  // namespace toft::study
