#include "network/drop.h"

namespace toft::network {

template <class L>
ValueIn<L, Volts> line_drop(L& ledger, const ValueIn<L, Volts>& u0, const ValueIn<L, Amperes>& i,
                            const ValueIn<L, double>& power_factor, const ImpedanceIn<L>& line) {
    const auto sine = ledger.let({"sin.phi", "reactive share of the load"},
                                 root(most(1.0 - squared(power_factor), 0.0)));
    const auto along = ledger.let(
        {"U.along", "drop in step with the voltage at the load", 0, "", "Appendix 4, 6.2"},
        i * (line.r * power_factor + line.x * sine));
    const auto across = ledger.let({"U.across", "drop at right angles to it"},
                                   i * (line.x * power_factor - line.r * sine));
    const auto left = ledger.let(
        {"U.left", "voltage left at the load"},
        most(root(most(squared(u0) - squared(across), squared(volts(0)))) - along, volts(0)));
    return ledger.let({"dU", "voltage drop of the run"}, u0 - left);
}

template Volts line_drop(Silent&, const Volts&, const Amperes&, const double&, const Impedance&);
template Traced<Volts> line_drop(Recording&, const Traced<Volts>&, const Traced<Amperes>&,
                                 const Traced<double>&, const ImpedanceIn<Recording>&);

}  // namespace toft::network
