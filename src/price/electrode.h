#pragma once
// Price of an electrode of driven rods: the pieces they are coupled from, one connection with its
// pit, and the labour of driving each piece. Other shapes are not priced.

#include "price/lines.h"

namespace toft::price {

/// Pieces of `section` that make one rod of that length; at least one.
double rod_pieces(Metres length, Metres section);

/// Pounds without tax for `pieces` driven in all.
template <class L>
ValueIn<L, Pounds> electrode_price(L& ledger, const Book& book, double pieces);

/// The same, as lines among others.
template <class L, class S>
ValueIn<L, Pounds> electrode_lines(Lines<L, S>& lines, double pieces) {
    return lines.some({"p.rod", "rods, by the piece"}, Item::rod, pieces) +
           lines.one({"p.pit", "connection and inspection pit"}, Item::rod_connection_and_pit) +
           lines.labour({"h.rod", "hours on a piece of the electrode", 0, "h"},
                        "labour on the electrode", Item::hours_rod, pieces);
}

}  // namespace toft::price
