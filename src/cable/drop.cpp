#include "cable/drop.h"

namespace toft::cable {

namespace {

/// How often the tabulated figure is met: once for a line and its neutral; for three phases one
/// core, and the neutral as far as it carries current.
template <class L>
ValueIn<L, double> times_met(L& ledger, const DropInput<L>& in) {
    const auto root_three = ledger.stated({"root3", "line to line over line to neutral", in.leg},
                                          root(3.0), "three phases");
    return ledger.let({"n", "times the tabulated figure is met, line and neutral", in.leg},
                      (1.0 + in.neutral_share) / root_three);
}

/// Load over the load that heats the conductor fully; 1 where the tables give no such load.
template <class L>
ValueIn<L, double> load_share(L& ledger, const DropInput<L>& in) {
    const Name name{"load", "load as a share of what heats the conductor fully", in.leg};
    const auto* rated =
        in.factors.method ? &in.duty.rating[static_cast<std::size_t>(*in.factors.method)] : nullptr;
    if (!rated || !rated->citation) {
        return ledger.stated(name, 1.0, "no rating is tabulated for this cable laid so");
    }
    const auto it = ledger.table({"It", "tabulated rating", in.leg}, *rated);
    return ledger.let(name, least(in.ib / (it * in.factors.heat), 1.0));
}

/// Stands for a drop that is not tabulated: no voltage is left at the end of such a leg.
constexpr OhmsPerMetre as_if_broken = ohms_per_metre(1e6);

template <class L>
ValueIn<L, OhmsPerMetre> tabulated(L& ledger, const Name& name, const Cited<OhmsPerMetre>& figure) {
    if (figure.citation) return ledger.table(name, figure);
    return ledger.stated(name, as_if_broken, "no drop is tabulated for so many loaded cores");
}

}  // namespace

template <class L>
LegDrop<L> leg_drop(L& ledger, const DropInput<L>& in) {
    const int leg = in.leg;
    const auto tp = ledger.table({"tp", "highest working temperature of the insulation", leg},
                                 in.make.live.initial);
    const auto share = load_share(ledger, in);
    LegDrop<L> out;
    out.conductor = ledger.let({"t", "working temperature of the conductor", leg, "", "IEC 60287"},
                               in.surroundings + (tp - in.surroundings) * squared(share));
    const auto beta = ledger.table(
        {"beta", "kelvins below 0 °C at which the metal would have no resistance", leg},
        in.constants.material(in.make.metal).beta);
    const auto ct =
        ledger.let({"Ct", "correction for conductor temperature", leg, "", "Appendix 4, 6.1"},
                   (beta + (out.conductor - celsius(0))) / (beta + (tp - celsius(0))));
    const auto r = tabulated(ledger, {"r", "tabulated drop, resistive part", leg}, in.duty.drop_r);
    const auto x = tabulated(ledger, {"x", "tabulated drop, reactive part", leg}, in.duty.drop_x);
    const Name r_name{"R", "resistance met on the leg, line and neutral", leg};
    const Name x_name{"X", "reactance met on the leg, line and neutral", leg};
    if (in.phases == 1) {
        out.loop.r = ledger.let(r_name, r * ct * in.length);
        out.loop.x = ledger.let(x_name, x * in.length);
        return out;
    }
    const auto n = times_met(ledger, in);
    out.loop.r = ledger.let(r_name, r * ct * in.length * n);
    out.loop.x = ledger.let(x_name, x * in.length * n);
    return out;
}

template LegDrop<Silent> leg_drop(Silent&, const DropInput<Silent>&);
template LegDrop<Recording> leg_drop(Recording&, const DropInput<Recording>&);

}  // namespace toft::cable
