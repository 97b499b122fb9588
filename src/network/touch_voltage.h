#pragma once
// Volts between metal that a fault or the neutral's current lifts and metal or ground that it does
// not, while the device clears. Prospective: without body, shoes or floor in between. Impedances
// add as magnitudes, which reads high.
//
//   earth carried out    Ut = If |Z|      Z: protective path from the house's earthing terminal to
//                                         the fault; against metal on that terminal
//   neutral as earth     Ur = I |Zn| RE/(RE + RB)    rise of the terminal against true ground when
//                                         I returns along Zn from the house to the source
//   own electrode        Ut = If RA       against true ground, as long as the fault lasts
//   residual device      Ut = IdN RA      above which it is bound to act (411.5.3)
//
// Page: docs/methods/touch-voltage.md.

#include "base/impedance.h"

namespace toft::network {

/// Metal of the outbuilding against metal joined to the house's terminal.
template <class L>
ValueIn<L, Volts> carried_touch(L& ledger, const Name& name, const ValueIn<L, Amperes>& fault,
                                const ImpedanceIn<L>& protective);

/// The two ends that the drop along the neutral is shared between.
template <class L>
struct GroundedEnds {
    ValueIn<L, Ohms> house{};   ///< RE: earth of the house's terminal, above 0
    ValueIn<L, Ohms> source{};  ///< RB: earth of the source's neutral; 0 reads high
};

/// The terminal of the house against true ground. Its drop is shared as RE to RB; a house without
/// any earth of its own has the whole drop: use a high RE.
template <class L>
ValueIn<L, Volts> neutral_rise(L& ledger, const Name& name, const ValueIn<L, Amperes>& current,
                               const ImpedanceIn<L>& neutral, const GroundedEnds<L>& ends);

/// Metal of the outbuilding against true ground: both together, as if in step, which reads high.
template <class L>
ValueIn<L, Volts> carried_touch_to_ground(L& ledger, const Name& name,
                                          const ValueIn<L, Volts>& along_run,
                                          const ValueIn<L, Volts>& house);

/// `current` is the fault's, or the rated residual current of the device that must act.
template <class L>
ValueIn<L, Volts> own_electrode_touch(L& ledger, const Name& name,
                                      const ValueIn<L, Amperes>& current,
                                      const ValueIn<L, Ohms>& electrode);

}  // namespace toft::network
