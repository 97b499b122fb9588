#pragma once
// The conductors a fault current of the run flows through, at one state of heat.

#include "study/figures.h"

namespace toft::study {

/// Impedances of the whole run at one state of heat. `serving` is what the scheme relies on;
/// `armour` alone is what a fault to an armour that does not serve goes back through.
template <class L>
struct FaultPath {
    ImpedanceIn<L> line;
    ImpedanceIn<L> core;  ///< protective core of the cable
    ImpedanceIn<L> armour;
    ImpedanceIn<L> separate;  ///< separate protective conductor
    ImpedanceIn<L> serving;
};

/// `length` is the longest or shortest the run may be, as the caller needs.
template <class L>
FaultPath<L> fault_path(L& ledger, const Setting<L>& setting, const RunScheme& scheme, Heat heat,
                        const ValueIn<L, Metres>& length);

}  // namespace toft::study
