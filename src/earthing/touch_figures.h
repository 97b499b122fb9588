#pragma once
// The volts that people meet while an earth fault at the far end of the run, or in a building on
// its own electrode, is cleared; and how long such a touch may last. Prospective: without the
// person. Information beside the rule disconnection, which sets the times the regulations ask for.
// Page: docs/methods/touch-figures.md.

#include "shock/touch_time.h"
#include "study/figures.h"

namespace toft::study {

template <class L>
struct TouchFigures {
    bool own_electrode = false;       ///< against the ground; else against the house's earth
    ValueIn<L, Volts> outbuilding{};  ///< on its metal
    ValueIn<L, Volts> house{};        ///< on the house's metal, against true ground
    ValueIn<L, Seconds> lasts{};      ///< until the fault is cleared; infinite if it is not
    shock::LongestTouch<L> dry;       ///< for the outbuilding's volts
    shock::LongestTouch<L> wet;
};

/// `figures` must be worked out as far as Stage::heat.
template <class L>
TouchFigures<L> touch_figures(L& ledger, const Setting<L>& setting, const RunScheme& scheme,
                              const Figures<L>& figures);

}  // namespace toft::study
