#pragma once
// Resistance to earth of driven rods in uniform soil: R = rho/(2 pi L) (ln(8 L/d) - 1), BS 7430; n
// rods one rod length apart: R1/n times a tabulated factor. Within about 1.5 % above the exact
// solution for rods of 1.2 m to 3 m. It knows nothing of layers or seasons: a measured value beats
// it. Page: docs/methods/earth-rod.md.

#include "base/interpolate.h"
#include "base/units.h"

#include <vector>

namespace toft::earth {

template <class L>
struct Rods {
    ValueIn<L, OhmMetres> resistivity{};
    ValueIn<L, Metres> length{};    ///< of one rod in the ground, 0.3 to 30 m
    ValueIn<L, Metres> diameter{};  ///< 5 to 60 mm
    double count = 1;               ///< 1 to 4
};

template <class L>
ValueIn<L, Ohms> rod_resistance(L& ledger, const Name& name,
                                const std::vector<TablePoint>& parallel, const Rods<L>& rods);

}  // namespace toft::earth
