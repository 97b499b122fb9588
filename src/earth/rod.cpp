#include "earth/rod.h"

namespace toft::earth {

namespace {

constexpr double two_pi = 6.283185307179586;

}  // namespace

template <class L>
ValueIn<L, Ohms> rod_resistance(L& ledger, const Name& name,
                                const std::vector<TablePoint>& parallel, const Rods<L>& rods) {
    const auto single = ledger.let(
        {"R.rod", "one rod alone", name.part, "", "BS 7430, 9.5.3"},
        rods.resistivity / (two_pi * rods.length) * (ln(8.0 * rods.length / rods.diameter) - 1.0));
    const auto factor = read_between(ledger,
                                     {{"rods.below", "factor for fewer rods", name.part},
                                      {"rods.above", "factor for more rods", name.part},
                                      {"rods.factor", "factor for rods side by side", name.part}},
                                     parallel.data(), parallel.size(), rods.count);
    return ledger.let(name, single * factor / rods.count);
}

template Ohms rod_resistance(Silent&, const Name&, const std::vector<TablePoint>&,
                             const Rods<Silent>&);
template Traced<Ohms> rod_resistance(Recording&, const Name&, const std::vector<TablePoint>&,
                                     const Rods<Recording>&);

}  // namespace toft::earth
