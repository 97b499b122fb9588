#pragma once
// Voltage at a source that feeds a line backwards with current in step with the voltage at the
// origin:
//
//   rise = sqrt((U0 + I R)² + (I X)²) − U0
//
// Exact for that current; a source that follows its own terminals differs in the second order.
// Page: docs/methods/voltage-rise.md.

#include "base/impedance.h"

namespace toft::network {

template <class L>
ValueIn<L, Volts> source_rise(L& ledger, const Name& name, const ValueIn<L, Volts>& u0,
                              const ValueIn<L, Amperes>& current, const ImpedanceIn<L>& line);

}  // namespace toft::network
