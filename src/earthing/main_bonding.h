#pragma once
// The section of main bonding a supply asks for: by the operator's neutral on TN-C-S (Table 54.8),
// half the earthing conductor, not under 6 nor over 25 mm2, elsewhere (544.1.1). Copper.

#include "study/scheme.h"
#include "study/setting.h"

namespace toft::study {

template <class L>
ValueIn<L, SquareMillimetres> bonding_for_combined(L& ledger, const Setting<L>& setting);

template <class L>
ValueIn<L, SquareMillimetres> bonding_for_separate(L& ledger, const Setting<L>& setting,
                                                   const ValueIn<L, SquareMillimetres>& earthing);

/// What the job's supply asks for.
template <class L>
ValueIn<L, SquareMillimetres> bonding_asked(L& ledger, const Setting<L>& setting);

/// The copper section fitted in the building to each part of its metalwork: stocked, and no less
/// than is asked for where the building shares the supply's earth.
SquareMillimetres local_bond(const Setting<Silent>& setting, BuildingEarthing earthing);

}  // namespace toft::study
