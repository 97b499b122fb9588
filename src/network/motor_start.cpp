#include "network/motor_start.h"

namespace toft::network {

template <class L>
ValueIn<L, double> starting_dip(L& ledger, const Name& name, const ValueIn<L, Volts>& u0,
                                const ValueIn<L, Amperes>& starting, const ValueIn<L, Ohms>& z) {
    const auto motor =
        ledger.let({"Z.motor", "impedance of the motor at rest", name.part}, u0 / starting);
    return ledger.let(name, 100.0 * z / (z + motor));
}

template <class L>
ValueIn<L, double> torque_left(L& ledger, const Name& name, const ValueIn<L, double>& dip_percent) {
    return ledger.let(name, squared(1.0 - dip_percent / 100.0));
}

template double starting_dip(Silent&, const Name&, const Volts&, const Amperes&, const Ohms&);
template Traced<double> starting_dip(Recording&, const Name&, const Traced<Volts>&,
                                     const Traced<Amperes>&, const Traced<Ohms>&);
template double torque_left(Silent&, const Name&, const double&);
template Traced<double> torque_left(Recording&, const Name&, const Traced<double>&);

}  // namespace toft::network
