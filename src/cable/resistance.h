#pragma once
// Resistance of a metal at temperature: R = R20 (1 + alpha20 (t - 20)). IEC 60287-1-1, IEC 60228.
// Valid between -50 and 300 °C. Page: docs/methods/conductor-resistance.md.

#include "base/ledger.h"
#include "base/temperature.h"

namespace toft::cable {

/// Factor by which a resistance at 20 °C grows up to `t`.
template <class L>
ValueIn<L, double> resistance_rise(L& ledger, const Name& name,
                                   const ValueIn<L, PerKelvin>& alpha20,
                                   const ValueIn<L, Celsius>& t);

/// Resistance per metre at the temperature that belongs to `rise`.
template <class L>
ValueIn<L, OhmsPerMetre> resistance_at(L& ledger, const Name& name,
                                       const ValueIn<L, OhmsPerMetre>& r20,
                                       const ValueIn<L, double>& rise);

}  // namespace toft::cable
