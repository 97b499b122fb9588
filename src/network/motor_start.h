#pragma once
// A motor at rest when it is switched on takes its current as an impedance of U0 over the starting
// current. With everything before it of impedance Z its terminals fall short by
//
//   dip = Z / (Z + U0 / Ist)
//
// if both have the same angle, which no other pair of angles from 0 to 90 degrees exceeds. Torque
// goes with the square of the voltage that is left. Exact for a stalled machine of constant
// impedance; the dip eases as it gathers speed. Page: docs/methods/motor-start.md.

#include "base/impedance.h"

namespace toft::network {

/// Share of the voltage that is missing at the terminals, per cent, 0 to 100.
template <class L>
ValueIn<L, double> starting_dip(L& ledger, const Name& name, const ValueIn<L, Volts>& u0,
                                const ValueIn<L, Amperes>& starting, const ValueIn<L, Ohms>& z);

/// Torque left over torque at full voltage.
template <class L>
ValueIn<L, double> torque_left(L& ledger, const Name& name, const ValueIn<L, double>& dip_percent);

}  // namespace toft::network
