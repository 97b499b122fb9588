#include "cable/fault_heat.h"

namespace toft::cable {

template <class L>
ValueIn<L, AmpereSquareSeconds> withstand(L& ledger, const Name& name,
                                          const ValueIn<L, HeatConstant>& k,
                                          const ValueIn<L, SquareMillimetres>& s) {
    return ledger.let(name, squared(k) * squared(s));
}

HeatConstant k_from_principles(double big_k, double beta, Celsius initial, Celsius final) {
    return heat_constant(big_k * root(ln((beta + final.number()) / (beta + initial.number()))));
}

template AmpereSquareSeconds withstand(Silent&, const Name&, const HeatConstant&,
                                       const SquareMillimetres&);
template Traced<AmpereSquareSeconds> withstand(Recording&, const Name&, const Traced<HeatConstant>&,
                                               const Traced<SquareMillimetres>&);

}  // namespace toft::cable
