#pragma once
// The building's final circuits behind one run: what the run leaves at the board, handed to each
// circuit. Page: docs/methods/final-circuit.md.

#include "study/figures.h"

namespace toft::study {

/// What the board gives, once the figures are worked out up to `current`.
template <class L>
circuit::Feed<L> feed_of(L& ledger, const Setting<L>& setting, const RunScheme& scheme,
                         const Figures<L>& figures);

/// Designs every circuit of the setting; allocates only the first time figures are used.
template <class L>
void work_out_circuits(L& ledger, const Setting<L>& setting, const RunScheme& scheme,
                       Figures<L>& figures);

}  // namespace toft::study
