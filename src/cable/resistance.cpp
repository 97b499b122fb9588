#include "cable/resistance.h"

namespace toft::cable {

template <class L>
ValueIn<L, double> resistance_rise(L& ledger, const Name& name,
                                   const ValueIn<L, PerKelvin>& alpha20,
                                   const ValueIn<L, Celsius>& t) {
    return ledger.let(name, 1.0 + alpha20 * (t - reference_temperature));
}

template <class L>
ValueIn<L, OhmsPerMetre> resistance_at(L& ledger, const Name& name,
                                       const ValueIn<L, OhmsPerMetre>& r20,
                                       const ValueIn<L, double>& rise) {
    return ledger.let(name, r20 * rise);
}

template double resistance_rise(Silent&, const Name&, const PerKelvin&, const Celsius&);
template Traced<double> resistance_rise(Recording&, const Name&, const Traced<PerKelvin>&,
                                        const Traced<Celsius>&);
template OhmsPerMetre resistance_at(Silent&, const Name&, const OhmsPerMetre&, const double&);
template Traced<OhmsPerMetre> resistance_at(Recording&, const Name&, const Traced<OhmsPerMetre>&,
                                            const Traced<double>&);

}  // namespace toft::cable
