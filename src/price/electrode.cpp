#include "price/electrode.h"

#include <cmath>

namespace toft::price {

double rod_pieces(Metres length, Metres section) {
    return std::fmax(1, std::ceil(length / section - 1e-9));
}

template <class L>
ValueIn<L, Pounds> electrode_price(L& ledger, const Book& book, double pieces) {
    const auto stated = [&](const Name& name, Item item) {
        return ledger.stated(name, pounds(book.amount(item)), book.name.c_str());
    };
    return stated({"p.rod", "rods, by the piece"}, Item::rod) * pieces +
           stated({"p.pit", "connection and inspection pit"}, Item::rod_connection_and_pit) +
           stated({"p.rodlabour", "labour on the electrode"}, Item::labour_hour) *
               (book.amount(Item::hours_rod) * pieces);
}

template Pounds electrode_price(Silent&, const Book&, double);
template Traced<Pounds> electrode_price(Recording&, const Book&, double);

}  // namespace toft::price
