#pragma once
// Metal in concrete in uniform soil.
//
// A rod in a column of concrete or backfill (Fagan and Lee 1970; BS 7430, IEEE 80):
//   R = rho/(2 pi L) (ln(8 L/D) - 1) + rho_c/(2 pi L) ln(D/d)
// A straight reinforced member (BS 7430), z the geometric mean distance of its bars:
//   R = ((rho_c - rho) ln(1 + c/z) + rho ln(2 L/z))/(2 pi L)
//
// Both from memory. The column is sound physics for L >= 4 D; of the member's formula no error is
// known, so it is never better than `outside`. Concrete that a membrane or insulation parts from
// the ground may be no electrode at all: `unsafe`. Page: docs/methods/foundation.md.

#include "earth/estimate.h"

namespace toft::earth {

template <class L>
struct EncasedRod {
    ValueIn<L, OhmMetres> soil{};
    ValueIn<L, OhmMetres> concrete{};  ///< 30 to 90 ohm m in moist ground
    ValueIn<L, Metres> length{};
    ValueIn<L, Metres> rod{};     ///< diameter of the metal
    ValueIn<L, Metres> column{};  ///< diameter of the concrete
};

template <class L>
Estimate<L> encased_rod(L& ledger, const Name& name, const EncasedRod<L>& rod);

template <class L>
struct FoundationMember {
    ValueIn<L, OhmMetres> soil{};
    ValueIn<L, OhmMetres> concrete{};
    ValueIn<L, Metres> length{};
    ValueIn<L, Metres> cover{};  ///< concrete between the bars and the soil
    ValueIn<L, Metres> bars{};   ///< geometric mean distance of the bars
    bool membrane = true;        ///< a membrane or insulation lies between concrete and ground
};

template <class L>
Estimate<L> foundation_member(L& ledger, const Name& name, const FoundationMember<L>& member);

/// The geometric mean distance of two bars of radius `radius`, `spacing` apart.
template <class L>
ValueIn<L, Metres> two_bars(L& ledger, const Name& name, const ValueIn<L, Metres>& radius,
                            const ValueIn<L, Metres>& spacing);

}  // namespace toft::earth
