#pragma once
// Price of a scheme in five parts: house end, run, ground, far end, test and paper. Materials and
// labour come from a price book; the working names every item.

#include "price/book.h"
#include "study/scheme.h"
#include "study/setting.h"

namespace toft::price {

template <class L>
struct Price {
    ValueIn<L, Pounds> house_end{};
    ValueIn<L, Pounds> run{};
    ValueIn<L, Pounds> ground{};
    ValueIn<L, Pounds> far_end{};
    ValueIn<L, Pounds> test_and_paper{};
    ValueIn<L, Pounds> remedies{};  ///< what must be put right at the house first
    ValueIn<L, Pounds> net{};
    ValueIn<L, Pounds> vat{};
    ValueIn<L, Pounds> total{};
};

/// Net, tax and total from the parts.
void add_up(Price<Silent>& price, const Book& book);

/// Prices one scheme. `remedies` are items of the book that findings asked for.
template <class L>
Price<L> price_of(L& ledger, const Book& book, const study::Setting<Silent>& setting,
                  const study::RunScheme& scheme, const std::vector<Item>& remedies);

}  // namespace toft::price
