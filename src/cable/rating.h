#pragma once
// Current-carrying capacity of a leg by table: Iz = It Ca Cg Ci Cs Cd Cc. BS 7671 Appendix 4,
// item 5. The factors depend on the leg and the insulation, not on the size, so they are read once
// a leg. Page: docs/methods/current-rating.md.

#include "base/ledger.h"
#include "tables/cable.h"

#include <optional>

namespace toft::cable {

using tables::Laying;

/// What surrounds the cable on one leg.
struct Surroundings {
    Laying laying = Laying::clipped;
    Celsius temperature;               ///< of air or ground, 0 to 60 °C
    double circuits = 1;               ///< loaded circuits together, this one included
    double thermal_resistivity = 2.5;  ///< of the soil, K m/W, 0.5 to 3
    Metres depth;                      ///< 0.3 to 3 m
    Metres in_insulation;              ///< of cable wholly inside thermal insulation
    int leg = 1;                       ///< number of the leg, for the working
};

template <class L>
struct LegFactors {
    std::optional<tables::ReferenceMethod> method;  ///< none: no rating is tabulated for it
    ValueIn<L, double> ca{};
    ValueIn<L, double> cg{};
    ValueIn<L, double> ci{};
    ValueIn<L, double> cs{};
    ValueIn<L, double> cd{};
    ValueIn<L, double> cc{};
    ValueIn<L, double> heat{};   ///< product of those that act on temperature: all but Cc
    ValueIn<L, double> total{};  ///< product of all
};

/// The tables a leg's factors are read from.
struct FactorTables {
    const tables::CableConstants& constants;
    const tables::Make& make;
    const Cited<double>& buried_cc;  ///< the rulebook's factor for cable in the ground
};

/// Factors of one leg for cable of one make.
template <class L>
LegFactors<L> leg_factors(L& ledger, const FactorTables& tables, const Surroundings& at);

/// Iz of one leg: tabulated rating for the leg's method times the factors; 0 where none is
/// tabulated.
template <class L>
ValueIn<L, Amperes> leg_rating(L& ledger, const tables::Duty& duty, const LegFactors<L>& factors,
                               int leg);

}  // namespace toft::cable
