#pragma once
// Price of an electrode of driven rods: the pieces they are coupled from, one connection with its
// pit, and the labour of driving each piece. Other shapes are not priced.

#include "base/ledger.h"
#include "price/book.h"

namespace toft::price {

/// Pieces of `section` that make one rod of that length; at least one.
double rod_pieces(Metres length, Metres section);

/// Pounds without tax for `pieces` driven in all.
template <class L>
ValueIn<L, Pounds> electrode_price(L& ledger, const Book& book, double pieces);

}  // namespace toft::price
