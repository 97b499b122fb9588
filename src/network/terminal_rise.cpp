#include "network/terminal_rise.h"

#include <limits>

namespace toft::network {

template <class L>
ValueIn<L, Ohms> side_by_side(L& ledger, const Name& name, const ValueIn<L, Ohms>& r1,
                              const ValueIn<L, Ohms>& r2) {
    return ledger.let(name, r1 * r2 / (r1 + r2));
}

template <class L>
ValueIn<L, Volts> terminal_rise(L& ledger, const Name& name, const FloatingSupply<L>& supply,
                                const ValueIn<L, Ohms>& earth) {
    const auto load = ledger.let({"Z.load", "what is switched on, as a resistance", name.part},
                                 supply.u0 / supply.i);
    return ledger.let(name, supply.c * supply.u0 * earth / (earth + load));
}

template <class L>
ValueIn<L, Ohms> electrode_for(L& ledger, const Name& name, const FloatingSupply<L>& supply,
                               const ValueIn<L, Volts>& limit) {
    const auto source =
        ledger.let({"U.source", "highest voltage of the source", name.part}, supply.c * supply.u0);
    if (plain(source) <= plain(limit)) {
        return ledger.stated(name, ohms(std::numeric_limits<double>::infinity()),
                             "the source has no more than the limit");
    }
    return ledger.let(name, limit * supply.u0 / (supply.i * (source - limit)));
}

template <class L>
ValueIn<L, Amperes> neutral_current(L& ledger, const Name& name, const ValueIn<L, Amperes>& i1,
                                    const ValueIn<L, Amperes>& i2, const ValueIn<L, Amperes>& i3) {
    const auto along =
        ledger.let({"I.along", "in step with the first line", name.part, "", "equation A722.1"},
                   i1 - (i2 + i3) * 0.5);
    const auto across =
        ledger.let({"I.across", "at right angles to it", name.part, "", "equation A722.1"},
                   (i2 - i3) * (root(3.0) / 2));
    return ledger.let(name, root(squared(along) + squared(across)));
}

template Ohms side_by_side(Silent&, const Name&, const Ohms&, const Ohms&);
template Traced<Ohms> side_by_side(Recording&, const Name&, const Traced<Ohms>&,
                                   const Traced<Ohms>&);
template Volts terminal_rise(Silent&, const Name&, const FloatingSupply<Silent>&, const Ohms&);
template Traced<Volts> terminal_rise(Recording&, const Name&, const FloatingSupply<Recording>&,
                                     const Traced<Ohms>&);
template Ohms electrode_for(Silent&, const Name&, const FloatingSupply<Silent>&, const Volts&);
template Traced<Ohms> electrode_for(Recording&, const Name&, const FloatingSupply<Recording>&,
                                    const Traced<Volts>&);
template Amperes neutral_current(Silent&, const Name&, const Amperes&, const Amperes&,
                                 const Amperes&);
template Traced<Amperes> neutral_current(Recording&, const Name&, const Traced<Amperes>&,
                                         const Traced<Amperes>&, const Traced<Amperes>&);

}  // namespace toft::network
