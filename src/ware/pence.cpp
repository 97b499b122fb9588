#include "ware/pence.h"

#include <cmath>

namespace toft::ware {

long long pence(Pounds amount) { return std::llround(amount.number() * 100); }

Pounds of_pence(long long pence) { return pounds(static_cast<double>(pence) / 100); }

std::optional<Pounds> shared_out(Pounds amount, double count) {
    if (!(count > 0)) return std::nullopt;
    const Pounds one = of_pence(std::llround(amount.number() * 100 / count));
    if (pence(one * count) != pence(amount)) return std::nullopt;
    return one;
}

}  // namespace toft::ware
