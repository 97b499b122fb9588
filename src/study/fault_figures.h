#pragma once
// The fault stages of the figures: loops and currents at both ends at both extremes; then what the
// device makes of them: disconnection and heat.

#include "study/figures.h"

namespace toft::study {

/// Stage `current`: nothing here looks at the device.
template <class L>
void work_out_currents(L& ledger, const Setting<L>& setting, const RunScheme& scheme,
                       Figures<L>& f);

/// Stage `heat`.
template <class L>
void work_out_heat(L& ledger, const Setting<L>& setting, const RunScheme& scheme, Figures<L>& f);

}  // namespace toft::study
