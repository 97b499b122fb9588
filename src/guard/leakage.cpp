#include "guard/leakage.h"

#include "base/limit.h"
#include "guard/row_of.h"

#include <algorithm>

namespace toft::guard {

Leakage leakage_of(const View& view, const site::Circuit& circuit) {
    if (circuit.leakage.known) return {circuit.leakage.low, circuit.leakage.high, true};
    const tables::LoadLeakage* usual = row_of(view.tables().leakages, circuit.kind);
    return usual ? Leakage{usual->low.value, usual->high.value, false}
                 : Leakage{amperes(0), circuit_sensitivity(view), false};
}

Leakage leakage_of_all(const View& view) {
    Leakage sum;
    for (std::size_t i = 0; i < circuit_count(view); ++i) {
        const Leakage one = leakage_of(view, circuit_at(view, i));
        sum = {sum.low + one.low, sum.high + one.high, sum.stated && one.stated};
    }
    return sum;
}

Amperes leakage_allowed(const View& view, Amperes sensitivity) {
    return sensitivity * view.limits().residual_leakage.value;
}

Budget budget_of(const View& view, const Leakage& leakage, Amperes sensitivity) {
    const double allowed = leakage_allowed(view, sensitivity).number();
    if (within(leakage.high.number(), allowed)) return Budget::kept;
    return within(leakage.low.number(), allowed) ? Budget::may_exceed : Budget::exceeds;
}

Budget worst_circuit(const View& view) {
    Budget worst = Budget::kept;
    for (std::size_t i = 0; i < circuit_count(view); ++i) {
        worst = std::max(worst, budget_of(view, leakage_of(view, circuit_at(view, i)),
                                          circuit_sensitivity(view)));
    }
    return worst;
}

}  // namespace toft::guard
