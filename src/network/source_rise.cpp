#include "network/source_rise.h"

namespace toft::network {

template <class L>
ValueIn<L, Volts> source_rise(L& ledger, const Name& name, const ValueIn<L, Volts>& u0,
                              const ValueIn<L, Amperes>& current, const ImpedanceIn<L>& line) {
    const auto along =
        ledger.let({"U.behind", "voltage at the source in step with the origin's", name.part},
                   u0 + current * line.r);
    const auto across =
        ledger.let({"U.beside", "voltage at right angles to it", name.part}, current * line.x);
    return ledger.let(name, root(squared(along) + squared(across)) - u0);
}

template Volts source_rise(Silent&, const Name&, const Volts&, const Amperes&, const Impedance&);
template Traced<Volts> source_rise(Recording&, const Name&, const Traced<Volts>&,
                                   const Traced<Amperes>&, const ImpedanceIn<Recording>&);

}  // namespace toft::network
