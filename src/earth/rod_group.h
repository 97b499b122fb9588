#pragma once
// Equal vertical rods joined together in uniform soil, their tops at the surface: in a line, at the
// corners of an equilateral triangle, or along the sides of a hollow square (BS 7430, 9.5.3). Each
// rod alone has rho/(2 pi L) (ln(8 L/d) - 1); n of them R1 (1 + lambda alpha)/n with
// alpha = rho/(2 pi R1 s).
//
// Error against a field solution, 1.2 m rods: +4 to +7 % one length apart, +1 to +2 % two lengths
// apart, +30 % a quarter of a length apart. Always on the safe side, so closer than one length is
// `outside`. More rods than the table holds are `unsafe`: lambda still grows there.
// Page: docs/methods/rod-group.md.

#include "base/interpolate.h"
#include "earth/estimate.h"

#include <vector>

namespace toft::earth {

template <class L>
struct RodGroup {
    ValueIn<L, OhmMetres> resistivity{};
    ValueIn<L, Metres> length{};    ///< of one rod in the ground, 0.3 to 30 m
    ValueIn<L, Metres> diameter{};  ///< 5 to 60 mm
    ValueIn<L, Metres> spacing{};   ///< centre to centre of neighbours
    double count = 2;  ///< rods of a line (2 to 10), or of one side of a square (2 to 20)
};

/// `lambda` holds the factors of BS 7430 for rods in a line over their number.
template <class L>
Estimate<L> rods_in_line(L& ledger, const Name& name, const std::vector<TablePoint>& lambda,
                         const RodGroup<L>& rods);

/// A hollow square of 4 (count - 1) rods; `lambda` is tabulated over the rods of one side.
template <class L>
Estimate<L> rods_in_square(L& ledger, const Name& name, const std::vector<TablePoint>& lambda,
                           const RodGroup<L>& rods);

/// Three rods; `count` is not read.
template <class L>
Estimate<L> rods_in_triangle(L& ledger, const Name& name, const RodGroup<L>& rods);

}  // namespace toft::earth
