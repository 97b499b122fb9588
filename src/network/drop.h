#pragma once
// Voltage lost along a line that feeds a load of constant current, exactly: with the source at U0
// and the load's current lagging its own voltage by phi,
//   Ur = sqrt(U0² − I²(X cos phi − R sin phi)²) − I (R cos phi + X sin phi),   drop = U0 − Ur.
// The trade's I (R cos phi + X sin phi) is its first term. Where no voltage is left the whole of U0
// is lost. Page: docs/methods/voltage-drop.md.

#include "base/impedance.h"

namespace toft::network {

/// A load at the end of a line.
template <class L>
struct Loading {
    ValueIn<L, Amperes> i{};
    ValueIn<L, double> power_factor{};  ///< lagging, 0 to 1
    int line = 0;                       ///< number of the line, for the working
};

template <class L>
ValueIn<L, Volts> line_drop(L& ledger, const ValueIn<L, Volts>& u0, const Loading<L>& load,
                            const ImpedanceIn<L>& line);

}  // namespace toft::network
