#pragma once
// The conductors a fault current flows through on one stretch of the run, at one state of heat.

#include "study/figures.h"

namespace toft::study {

/// Impedances of a whole stretch at one state of heat. `serving` is what the scheme relies on;
/// `armour` alone is what a fault to an armour that does not serve goes back through.
template <class L>
struct FaultPath {
    ImpedanceIn<L> line;
    ImpedanceIn<L> core;  ///< protective core of the cable
    ImpedanceIn<L> armour;
    ImpedanceIn<L> separate;  ///< separate protective conductor
    ImpedanceIn<L> serving;
};

/// Where along a run and in which state its conductors are looked at.
template <class L>
struct PathAt {
    Heat heat = Heat::cold;
    ValueIn<L, Metres> length{};  ///< of the stretch: the longest or shortest, as the caller needs
    int part = 0;                 ///< number of the stretch, for the working; 0 where it is the run
    bool as_read = false;         ///< readings of a cable that is there count where they are worse
};

template <class L>
FaultPath<L> fault_path(L& ledger, const Setting<L>& setting, const Stretch& stretch,
                        const PathAt<L>& at);

}  // namespace toft::study
