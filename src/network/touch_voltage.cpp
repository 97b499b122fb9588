#include "network/touch_voltage.h"

namespace toft::network {

template <class L>
ValueIn<L, Volts> carried_touch(L& ledger, const Name& name, const ValueIn<L, Amperes>& fault,
                                const ImpedanceIn<L>& protective) {
    return ledger.let(name, fault * magnitude(protective));
}

template <class L>
ValueIn<L, Volts> neutral_rise(L& ledger, const Name& name, const ValueIn<L, Amperes>& current,
                               const ImpedanceIn<L>& neutral, const GroundedEnds<L>& ends) {
    const auto drop = ledger.let({"U.neutral", "drop along the neutral", name.part},
                                 current * magnitude(neutral));
    return ledger.let(name, drop * ends.house / (ends.house + ends.source));
}

template <class L>
ValueIn<L, Volts> carried_touch_to_ground(L& ledger, const Name& name,
                                          const ValueIn<L, Volts>& along_run,
                                          const ValueIn<L, Volts>& house) {
    return ledger.let(name, along_run + house);
}

template <class L>
ValueIn<L, Volts> own_electrode_touch(L& ledger, const Name& name,
                                      const ValueIn<L, Amperes>& current,
                                      const ValueIn<L, Ohms>& electrode) {
    return ledger.let(name, current * electrode);
}

template Volts carried_touch(Silent&, const Name&, const Amperes&, const Impedance&);
template Traced<Volts> carried_touch(Recording&, const Name&, const Traced<Amperes>&,
                                     const ImpedanceIn<Recording>&);
template Volts neutral_rise(Silent&, const Name&, const Amperes&, const Impedance&,
                            const GroundedEnds<Silent>&);
template Traced<Volts> neutral_rise(Recording&, const Name&, const Traced<Amperes>&,
                                    const ImpedanceIn<Recording>&, const GroundedEnds<Recording>&);
template Volts carried_touch_to_ground<Silent>(Silent&, const Name&, const Volts&, const Volts&);
template Traced<Volts> carried_touch_to_ground<Recording>(Recording&, const Name&,
                                                          const Traced<Volts>&,
                                                          const Traced<Volts>&);
template Volts own_electrode_touch<Silent>(Silent&, const Name&, const Amperes&, const Ohms&);
template Traced<Volts> own_electrode_touch<Recording>(Recording&, const Name&,
                                                      const Traced<Amperes>&, const Traced<Ohms>&);

}  // namespace toft::network
