#include "price/electrode.h"

#include <cmath>

namespace toft::price {

double rod_pieces(Metres length, Metres section) {
    return std::fmax(1, std::ceil(length / section - 1e-9));
}

template <class L>
ValueIn<L, Pounds> electrode_price(L& ledger, const Book& book, double pieces) {
    NoSink silent;
    Lines<L, NoSink> lines(ledger, book, silent);
    return electrode_lines(lines, pieces);
}

template Pounds electrode_price(Silent&, const Book&, double);
template Traced<Pounds> electrode_price(Recording&, const Book&, double);

}  // namespace toft::price
