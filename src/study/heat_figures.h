#pragma once
// What the device makes of the fault currents: how soon they end, and how much they heat.

#include "study/figures.h"

namespace toft::study {

/// Stage `heat`.
template <class L>
void work_out_heat(L& ledger, const Setting<L>& setting, const RunScheme& scheme, Figures<L>& f);

}  // namespace toft::study
