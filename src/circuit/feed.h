#pragma once
// What the board of a building gives its circuits, as the run that feeds it leaves it. The circuits
// know of the run no more than this.

#include "base/impedance.h"

#include <array>

namespace toft::circuit {

/// How hot a fault finds or leaves the conductors: at their highest working temperature; a tenth of
/// the way from there to the highest temperature a fault may leave; at that temperature.
enum class Heat : unsigned char { working, early, fault };
inline constexpr std::size_t heats = 3;
inline constexpr double early_share = 0.1;

template <class L>
struct Feed {
    bool three_phase = false;  ///< the board has three lines
    bool by_conductor = true;  ///< earth faults come back through conductors, not through the
                               ///< ground: an overcurrent device can clear them
    ValueIn<L, Volts> u0{};
    ValueIn<L, double> c_min{};
    ValueIn<L, Volts> drop{};        ///< lost up to the board when the run carries its Ib
    ImpedanceIn<L> run;              ///< that a load of one line meets on the run, line and neutral
    ValueIn<L, Ohms> source{};       ///< line-neutral loop outside the installation, the largest
    ValueIn<L, Ohms> source_line{};  ///< of one line alone; three phases only
    std::array<ValueIn<L, Ohms>, heats> zn{};  ///< line-neutral loop at the board, by heat
    std::array<ValueIn<L, Ohms>, heats> zs{};  ///< earth fault loop at the board, by heat
    ValueIn<L, Amperes> short_most{};          ///< largest fault between live conductors there
    ValueIn<L, Amperes> earth_most{};          ///< largest earth fault there
};

}  // namespace toft::circuit
