#pragma once
// Three ways to earth an outbuilding, when the neutral of a one-line supply is lost: the supply's
// earth carried out; carried out and an electrode added there; an electrode of its own. What the
// metal of the outbuilding then has against true ground, and what its electrode carries.
//
//   carried          V = E R11/(R11 + Z)
//   carried + added  V = E Rp/(Rp + Z),  Rp = (R11 R22 − R12²)/(R11 + R22 − 2 R12)
//   own              V = k E R11/(R11 + Z)
//
// R11 is all that earths the house, R22 the outbuilding's electrode or frame, R12 = k R11 what the
// one does to the other; never more than either of them, so k R11 stops there. Volts against ground
// that neither lifts: the most that hand and feet can meet. Ground near an electrode is lifted too
// (earth/rod_pair.h says how much). Page: docs/methods/lost-neutral.md.

#include "base/ledger.h"
#include "base/units.h"

namespace toft::network {

enum class WayToEarth { carried, carried_and_added, own };

template <class L>
struct TwoEarths {
    ValueIn<L, Ohms> house{};          ///< R11, without the outbuilding's; above 0
    ValueIn<L, Ohms> outbuilding{};    ///< R22, above 0; not read where the earth is only carried
    ValueIn<L, double> transferred{};  ///< k, 0 to 1: share of the house's rise that reaches there
    ValueIn<L, Ohms> load{};           ///< U0/I of everything switched on, above 0
    ValueIn<L, Volts> source{};
};

template <class L>
struct OutbuildingEarth {
    ValueIn<L, Volts> metal{};        ///< of the outbuilding, against true ground
    ValueIn<L, Amperes> electrode{};  ///< out of the outbuilding's electrode; 0 where not joined
    ValueIn<L, Volts> house{};        ///< of the house's earthing terminal
};

template <class L>
OutbuildingEarth<L> outbuilding_earth(L& ledger, WayToEarth way, const TwoEarths<L>& earths);

/// Between two figures, each above 0 but k.
struct EarthRanges {
    TwoEarths<Silent> low;   ///< every member at its lower end, `load` too
    TwoEarths<Silent> high;  ///< every member at its upper end
};

struct OutbuildingRange {
    Volts metal_low{};
    Volts metal_high{};
    Amperes electrode_low{};
    Amperes electrode_high{};
};

/// The least and the most over the ranges. Metal and electrode current each move one way with every
/// figure, so both ends stand at corners; only the least electrode current may lie at a share k
/// within its range, which is sought out.
OutbuildingRange outbuilding_range(WayToEarth way, const EarthRanges& ranges);

}  // namespace toft::network
