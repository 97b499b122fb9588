#include "cable/drop.h"

namespace toft::cable {

template <class L>
LegDrop<L> leg_drop(L& ledger, const tables::CableConstants& constants, const tables::Cable& cable,
                    const DropInput<L>& in) {
    const int leg = in.leg;
    const auto tp = ledger.table({"tp", "highest working temperature of the insulation", leg},
                                 constants.live.initial);
    const auto it = ledger.table({"It", "tabulated rating", leg},
                                 cable.rating[static_cast<std::size_t>(in.factors->method)]);
    const auto share =
        ledger.let({"load", "load as a share of what heats the conductor fully", leg},
                   least(in.ib / (it * in.factors->heat), 1.0));
    LegDrop<L> out;
    out.conductor = ledger.let({"t", "working temperature of the conductor", leg, "", "IEC 60287"},
                               in.surroundings + (tp - in.surroundings) * squared(share));
    const auto beta = ledger.table(
        {"beta", "reciprocal of the temperature coefficient at 0 °C", leg}, constants.copper.beta);
    const auto ct =
        ledger.let({"Ct", "correction for conductor temperature", leg, "", "Appendix 4, 6.1"},
                   (kelvins(1.0) * beta + (out.conductor - celsius(0))) /
                       (kelvins(1.0) * beta + (tp - celsius(0))));
    const auto r = ledger.table({"r", "tabulated drop, resistive part", leg}, cable.drop_r);
    const auto x = ledger.table({"x", "tabulated drop, reactive part", leg}, cable.drop_x);
    out.loop.r =
        ledger.let({"R", "resistance of line and neutral of the leg", leg}, r * ct * in.length);
    out.loop.x = ledger.let({"X", "reactance of line and neutral of the leg", leg}, x * in.length);
    return out;
}

template LegDrop<Silent> leg_drop(Silent&, const tables::CableConstants&, const tables::Cable&,
                                  const DropInput<Silent>&);
template LegDrop<Recording> leg_drop(Recording&, const tables::CableConstants&,
                                     const tables::Cable&, const DropInput<Recording>&);

}  // namespace toft::cable
