#include "network/drop.h"

namespace toft::network {

template <class L>
ValueIn<L, Volts> line_drop(L& ledger, const ValueIn<L, Volts>& u0, const Loading<L>& load,
                            const ImpedanceIn<L>& line) {
    const auto& i = load.i;
    const auto& power_factor = load.power_factor;
    const int n = load.line;
    const auto sine = ledger.let({"sin.phi", "reactive share of the load", n},
                                 root(most(1.0 - squared(power_factor), 0.0)));
    const auto along = ledger.let(
        {"U.along", "drop in step with the voltage at the load", n, "", "Appendix 4, 6.2"},
        i * (line.r * power_factor + line.x * sine));
    const auto across = ledger.let({"U.across", "drop at right angles to it", n},
                                   i * (line.x * power_factor - line.r * sine));
    const auto left = ledger.let(
        {"U.left", "voltage left at the load", n},
        most(root(most(squared(u0) - squared(across), squared(volts(0)))) - along, volts(0)));
    return ledger.let({"dU", "voltage drop of the run", n}, u0 - left);
}

template Volts line_drop(Silent&, const Volts&, const Loading<Silent>&, const Impedance&);
template Traced<Volts> line_drop(Recording&, const Traced<Volts>&, const Loading<Recording>&,
                                 const ImpedanceIn<Recording>&);

}  // namespace toft::network
