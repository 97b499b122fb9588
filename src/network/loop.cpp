#include "network/loop.h"

namespace toft::network {

template <class L>
ValueIn<L, Ohms> largest_loop(L& ledger, const Name& name, const ValueIn<L, Ohms>& source,
                              const ImpedanceIn<L>& path) {
    return ledger.let(name, source + magnitude(path));
}

template <class L>
ValueIn<L, Ohms> smallest_loop(L& ledger, const Name& name, const ValueIn<L, Ohms>& source,
                               const ImpedanceIn<L>& path) {
    return ledger.let(name, root(squared(source) + (squared(path.r) + squared(path.x))));
}

template <class L>
ValueIn<L, Amperes> fault_current(L& ledger, const Name& name, const ValueIn<L, double>& c,
                                  const ValueIn<L, Volts>& u0, const ValueIn<L, Ohms>& loop) {
    return ledger.let(name, c * u0 / loop);
}

template Ohms largest_loop(Silent&, const Name&, const Ohms&, const Impedance&);
template Traced<Ohms> largest_loop(Recording&, const Name&, const Traced<Ohms>&,
                                   const ImpedanceIn<Recording>&);
template Ohms smallest_loop(Silent&, const Name&, const Ohms&, const Impedance&);
template Traced<Ohms> smallest_loop(Recording&, const Name&, const Traced<Ohms>&,
                                    const ImpedanceIn<Recording>&);
template Amperes fault_current(Silent&, const Name&, const double&, const Volts&, const Ohms&);
template Traced<Amperes> fault_current(Recording&, const Name&, const Traced<double>&,
                                       const Traced<Volts>&, const Traced<Ohms>&);

}  // namespace toft::network
