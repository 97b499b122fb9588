#pragma once
// A rod through two layers of soil by the quick way: the layers in parallel make an apparent
// resistivity, which goes into the formula of one rod (IEEE 80; memory):
//
//   rho_a = L/(h/rho1 + (L - h)/rho2)
//
// Where the lower soil is worse (rock under loam) it reads low, by up to 26 % at ten times and 36 %
// at thirty times: `unsafe`, use the field (field/field.h). Where the lower soil is better it reads
// high: 3 to 11 % for rods that stand at least half in it (`within`), up to 35 % for rods that only
// just reach it, without bound for rods that do not (`outside`).
// Page: docs/methods/layered-rod.md.

#include "earth/estimate.h"

namespace toft::earth {

template <class L>
struct LayeredRod {
    ValueIn<L, OhmMetres> upper{};
    ValueIn<L, OhmMetres> lower{};
    ValueIn<L, Metres> thickness{};  ///< of the upper layer
    ValueIn<L, Metres> length{};
    ValueIn<L, Metres> diameter{};
};

template <class L>
Estimate<L> layered_rod(L& ledger, const Name& name, const LayeredRod<L>& rod);

}  // namespace toft::earth
