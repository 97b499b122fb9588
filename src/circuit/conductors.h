#pragma once
// The conductors of a final circuit: what they are rated for, what a load and a fault meet on the
// way to its last point, what heat they withstand. Independent of what feeds the circuit.
// Page: docs/methods/final-circuit.md.

#include "cable/rating.h"
#include "circuit/feed.h"
#include "tables/catalogue.h"

namespace toft::circuit {

/// What third harmonics of a three-phase circuit do to its neutral and its cable's rating.
template <class L>
struct Neutral {
    bool loaded = false;             ///< there are any
    ValueIn<L, double> over_line{};  ///< its current over that of a line
    ValueIn<L, double> leaves{};     ///< share of the rating that is left to the lines
};

/// A cable laid for one circuit.
template <class L>
struct Laid {
    const tables::Catalogue& catalogue;
    const tables::Cable& cable;
    const cable::LegFactors<L>& factors;
    ValueIn<L, Celsius> surroundings{};
    ValueIn<L, Metres> length{};    ///< of a ring a quarter of the way round
    ValueIn<L, Amperes> current{};  ///< that heats one conductor while the drop is counted
    int phases = 1;
    int number = 0;
    Neutral<L> neutral;
};

template <class L>
struct Conductors {
    ValueIn<L, Amperes> iz{};
    ImpedanceIn<L> load;  ///< that a load meets: line and neutral, or one line of three phases
    std::array<ImpedanceIn<L>, heats> line;  ///< of the line conductor, by heat
    std::array<ImpedanceIn<L>, heats> back;  ///< of the protective conductor, by heat
    ValueIn<L, Ohms> r1_r2_cold{};           ///< at 20 °C, as a test reads
    ValueIn<L, AmpereSquareSeconds> live_stands{};
    ValueIn<L, AmpereSquareSeconds> back_stands{};
};

template <class L>
Conductors<L> conductors(L& ledger, const Laid<L>& laid);

}  // namespace toft::circuit
