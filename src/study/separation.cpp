#include "base/pi.h"
#include "study/setting_parts.h"
#include "study/soil.h"

namespace toft::study {

namespace {

/// Current that a lost neutral would have carried: what the house draws, else what its fuse passes.
template <class L>
ValueIn<L, Amperes> returning(L& ledger, const Setting<L>& s) {
    const Name name{"I.neutral", "current that would seek the ground"};
    const site::Fact<Amperes>& demand = s.job->intake.demand;
    if (demand.known) return ledger.stated(name, demand.high, "demand of the house");
    return ledger.stated(name, s.house.service_fuse_most, "the operator's fuse");
}

/// What bears on how far the house's earth lifts the ground round an electrode: that earth is taken
/// as a half ball whose edge is the nearest metal.
template <class L>
struct Neighbours {
    ValueIn<L, Volts> u0{};
    ValueIn<L, Ohms> load{};    ///< that would seek the ground
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
                                   largest_in(soil.worst), soil.from);
    n.a = ledger.let({"rho.2pi", "its share in the rise of a half ball"}, rho / (2 * pi));
    n.load = ledger.let({"Z.load", "load that would seek the ground"}, n.u0 / returning(ledger, s));
    const site::Fact<Ohms>& earth = s.job->intake.earth_without_neutral;
    n.known = earth.known;
    if (!n.known) return n;
    const char* from = site::standing_word(earth.standing);
    n.low = ledger.stated({"RE.low", "house's earth, the least it may be"}, earth.low, from);
    n.high = ledger.stated({"RE.high", "house's earth, the most it may be"}, earth.high, from);
    return n;
}

/// Rise of the ground at `gap`, for the house's earth that lifts it most.
template <class L>
ValueIn<L, Volts> lift(L& ledger, const Neighbours<L>& n, const ValueIn<L, Metres>& gap) {
    const Name name{"U.lift", "rise of the ground at the electrode, the neutral lost"};
    if (!n.known) {
        // R/((R + Z)(a + gap R)) is greatest where R^2 = Z a/gap.
        return ledger.let(name, n.u0 / squared(1.0 + root(n.load * gap / n.a)));
    }
    const auto worst = plain(gap) > Metres{} ? n.clipped(root(n.load * n.a / gap)) : n.high * 1.0;
    const auto re = ledger.let({"RE.lift", "house's earth that lifts that ground most"}, worst);
    return ledger.let(name, n.u0 * (re / (re + n.load)) * (n.a / (n.a + gap * re)));
}

/// Distance at which the ground keeps to the touch voltage, whatever the house's earth.
template <class L>
ValueIn<L, Metres> needed(L& ledger, const Neighbours<L>& n, const ValueIn<L, Volts>& touch) {
    const auto re = ledger.let({"RE.far", "house's earth that lifts ground farthest"},
                               n.clipped(n.load / (root(n.u0 / touch) - 1.0)));
    const auto free = ledger.let({"gap.free", "distance at which the ground just keeps to it"},
                                 n.a * (n.u0 / ((re + n.load) * touch) - 1.0 / re));
    return ledger.let({"gap.needed", "distance wanted"}, most(free, Metres{}));
}

}  // namespace

template <class L>
void prepare_separation(L& ledger, Settler& settler, Setting<L>& s, const SoilSetting& soil,
                        const std::string& at) {
    BuildingSetting<L>& b = s.building;
    if (!b.gap_judged) return;
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
