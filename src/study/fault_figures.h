#pragma once
// Fault currents of the run: loops and currents at both ends of every stretch at both extremes.

#include "study/figures.h"

namespace toft::study {

/// Stage `current`: nothing here looks at the device.
template <class L>
void work_out_currents(L& ledger, const Setting<L>& setting, const RunScheme& scheme,
                       Figures<L>& f);

}  // namespace toft::study
