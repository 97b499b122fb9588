#pragma once
// Loops and what they drive: the fault current of a loop, and bounds on a loop of which one part is
// known by magnitude only. Circuit theory; no limit and no rule stands here.
// Page: docs/methods/fault-loop.md.

#include "base/impedance.h"

namespace toft::network {

/// Largest magnitude of a source known by magnitude in series with `path`: |source| + |path|. Two
/// impedances with angles from 0 to 90 degrees never add up to more.
template <class L>
ValueIn<L, Ohms> largest_loop(L& ledger, const Name& name, const ValueIn<L, Ohms>& source,
                              const ImpedanceIn<L>& path);

/// Smallest magnitude: sqrt(source2 + |path|2). Angles from 0 to 90 degrees never give less.
template <class L>
ValueIn<L, Ohms> smallest_loop(L& ledger, const Name& name, const ValueIn<L, Ohms>& source,
                               const ImpedanceIn<L>& path);

/// c U0 / Z.
template <class L>
ValueIn<L, Amperes> fault_current(L& ledger, const Name& name, const ValueIn<L, double>& c,
                                  const ValueIn<L, Volts>& u0, const ValueIn<L, Ohms>& loop);

}  // namespace toft::network
