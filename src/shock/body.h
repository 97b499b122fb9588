#pragma once
// The current through a body for a touch voltage. Impedance hand to hand by voltage, skin and
// share of people (IEC 60479-1), times the share of the path; in series, where feet stand on the
// ground, footwear and the ground under two feet (a tabulated factor times the resistivity of its
// surface):
//
//   I = U / (s Z(UB) + Rf + f rho),   UB = I s Z(UB)
//
// Impedance falls as voltage rises, so UB is sought; there is one. Below the lowest tabulated
// voltage the lowest row holds, which reads high; above the highest the table is flat. The tables
// are from memory. A figure for judgement: people differ by a factor of three, and no current is
// promised to be harmless. Page: docs/methods/body-current.md.

#include "base/interpolate.h"
#include "tables/shock.h"

namespace toft::shock {

struct Person {
    tables::Skin skin = tables::Skin::salt_wet;
    tables::Percentile percentile = tables::Percentile::five;
    tables::BodyPath path = tables::BodyPath::both_hands_to_both_feet;
};

/// Where the feet stand; not read hand to hand.
template <class L>
struct Footing {
    ValueIn<L, Ohms> footwear{};     ///< both feet together, 0 or more
    ValueIn<L, OhmMetres> ground{};  ///< of the surface, 0 or more
};

template <class L>
struct BodyCurrent {
    ValueIn<L, Amperes> current{};
    ValueIn<L, Volts> across{};    ///< the body itself
    ValueIn<L, Ohms> impedance{};  ///< of the body along the path
};

/// `touch` is prospective: without the person. 0 V or more.
template <class L>
BodyCurrent<L> body_current(L& ledger, const tables::Shock& tables, const Person& person,
                            const Footing<L>& footing, const ValueIn<L, Volts>& touch);

/// The same for a condition stated in the tables.
template <class L>
BodyCurrent<L> body_current(L& ledger, const tables::Shock& tables,
                            const tables::Condition& condition, const ValueIn<L, Volts>& touch);

/// The current from left hand to feet that does as much to the heart.
template <class L>
ValueIn<L, Amperes> heart_current(L& ledger, const Name& name, const tables::HeartFactor& factor,
                                  const ValueIn<L, Amperes>& current);

}  // namespace toft::shock
