#pragma once
// A final circuit made ready: its current, its length, how its cable lies, and every cable and
// device it may be built with, the smallest first. Prepared once a job; then judged against each
// feed. Page: docs/methods/final-circuit.md.

#include "cable/rating.h"
#include "circuit/conductors.h"
#include "site/job.h"
#include "tables/catalogue.h"

#include <array>
#include <string>
#include <vector>

namespace toft::circuit {

/// A cable with the device that protects it.
struct Option {
    const tables::Cable* cable = nullptr;
    const tables::Device* device = nullptr;
};

/// What a circuit does with the current.
enum class Duty : unsigned char { load, starts, generates };
inline constexpr std::size_t duties = 3;

template <class L>
struct CircuitSetting {
    const site::Circuit* facts = nullptr;
    std::size_t place = 0;  ///< in the building's list
    int number = 0;         ///< for the working
    int phases = 1;
    bool ring = false;
    Duty duty = Duty::load;
    std::vector<Option> options;
    std::vector<Conductors<Silent>> conductors;  ///< beside the options
    cable::LegFactors<L> factors;
    cable::LegFactors<Silent> plain_factors;
    ValueIn<L, Celsius> surroundings{};
    Neutral<L> neutral;
    ValueIn<L, Amperes> ib{};
    ValueIn<L, Amperes> drop_current{};  ///< what the voltage drop goes by: Ib, of a ring less
    ValueIn<L, double> power_factor{};
    ValueIn<L, Metres> length{};  ///< that the far point's current meets: of a ring a quarter of
                                  ///< the way round
    ValueIn<L, double> drop_limit{};  ///< per cent, origin to last point
    ValueIn<L, Amperes> start{};      ///< starting current; duty starts only
    bool dip_wished = false;
    ValueIn<L, double> dip_limit{};   ///< per cent
    ValueIn<L, double> rise_limit{};  ///< per cent; duty generates only
};

/// The circuits of one building that can be judged, and what kept the others from it.
template <class L>
struct Circuits {
    std::vector<CircuitSetting<L>> judged;
    std::vector<std::string> left_out;  ///< in sentences
    std::array<bool, duties> may_do{};  ///< by Duty: one of those left out may be such a circuit
    bool leaves_out(Duty duty) const { return may_do[static_cast<std::size_t>(duty)]; }
    bool all() const { return left_out.empty() && !judged.empty(); }
};

/// Circuits are numbered from here in the working, so that none is taken for a leg of the run.
inline constexpr int first_number = 101;

/// A cable as the circuit lays it.
template <class L>
Laid<L> laid_for(L& ledger, const tables::Catalogue& catalogue, const CircuitSetting<L>& setting,
                 const tables::Cable& cable);

/// Prepares the circuits of `building` on a board of so many phases. Job and catalogue must outlive
/// them.
template <class L>
Circuits<L> prepare(L& ledger, const tables::Catalogue& catalogue, const site::Job& job,
                    const site::Building& building, int board_phases);

}  // namespace toft::circuit
