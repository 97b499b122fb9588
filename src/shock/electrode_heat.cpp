#include "shock/electrode_heat.h"

#include "base/limit.h"
#include "base/pi.h"

namespace toft::shock {

template <class L>
SteadyRise<L> steady_rise(L& ledger, const Name& name, const tables::ElectrodeHeat& heat,
                          const WarmGround<L>& ground, const ValueIn<L, Volts>& v) {
    const auto rise =
        ledger.let(name, squared(v) / (2.0 * ground.conductivity * ground.resistivity));
    const auto most = ledger.table(
        {"theta.dry", "rise at which the ground is taken to dry", name.part}, heat.rise);
    const bool holds = within(plain(rise).number(), plain(most).number());
    return {rise, holds ? Heating::holds : Heating::dries};
}

template <class L>
ValueIn<L, Volts> drying_voltage(L& ledger, const Name& name, const tables::ElectrodeHeat& heat,
                                 const WarmGround<L>& ground) {
    const auto most = ledger.table(
        {"theta.dry", "rise at which the ground is taken to dry", name.part}, heat.rise);
    return ledger.let(name, root(2.0 * ground.conductivity * ground.resistivity * most));
}

template <class L>
ShortCurrent<L> short_current(L& ledger, const Name& name, const tables::ElectrodeHeat& heat,
                              const HotRod<L>& rod, const ValueIn<L, Seconds>& time) {
    const auto constant = ledger.table(
        {"K.electrode", "current density for short times", name.part}, heat.short_time);
    const auto density = ledger.let({"J.electrode", "current density the ground bears", name.part},
                                    constant / root(rod.resistivity * time));
    const auto area =
        ledger.let({"A.rod", "surface of the rod, m²", name.part}, pi * rod.diameter * rod.length);
    const auto current = ledger.let(name, density * area);
    const bool holds = within(plain(time).number(), heat.short_longest.value.number());
    return {density, current, holds ? ShortTime::holds : ShortTime::too_long};
}

template SteadyRise<Silent> steady_rise(Silent&, const Name&, const tables::ElectrodeHeat&,
                                        const WarmGround<Silent>&, const Volts&);
template SteadyRise<Recording> steady_rise(Recording&, const Name&, const tables::ElectrodeHeat&,
                                           const WarmGround<Recording>&, const Traced<Volts>&);
template Volts drying_voltage(Silent&, const Name&, const tables::ElectrodeHeat&,
                              const WarmGround<Silent>&);
template Traced<Volts> drying_voltage(Recording&, const Name&, const tables::ElectrodeHeat&,
                                      const WarmGround<Recording>&);
template ShortCurrent<Silent> short_current(Silent&, const Name&, const tables::ElectrodeHeat&,
                                            const HotRod<Silent>&, const Seconds&);
template ShortCurrent<Recording> short_current(Recording&, const Name&,
                                               const tables::ElectrodeHeat&,
                                               const HotRod<Recording>&, const Traced<Seconds>&);

}  // namespace toft::shock
