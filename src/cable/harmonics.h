#pragma once
// Third harmonics of three lines are in step: their sum comes back on the neutral, which then heats
// a cable whose rating is tabulated for three loaded cores. IEC 60364-5-52 annex E, BS 7671
// Appendix 4, item 5.5. Page: docs/methods/harmonics.md.

#include "base/ledger.h"
#include "tables/cable.h"

namespace toft::cable {

/// What the three lines of one cable carry besides their fundamental.
template <class L>
struct ThirdHarmonics {
    ValueIn<L, double> share{};    ///< per cent of the line current, above 0 and up to 100
    ValueIn<L, double> neutral{};  ///< current of the neutral over that of the most loaded line
    int number = 0;                ///< of the circuit, for the working
};

/// Ch, above 0 and at most 1: what is left of a cable's rating for the line current. The table's
/// factor by line or by neutral current; the neutral's current never passes the rating; and never
/// more than less harmonic would leave, though the table grants that past its last step.
template <class L>
ValueIn<L, double> harmonic_factor(L& ledger, const std::vector<tables::HarmonicStep>& steps,
                                   const ThirdHarmonics<L>& load);

}  // namespace toft::cable
