#pragma once
// Price of a scheme in five parts: house end, run, ground, far end, test and paper. Materials and
// labour come from a price book; the working names every item.

#include "price/book.h"
#include "study/figures.h"
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

/// Cable of a final circuit.
struct Wired {
    const tables::Cable* cable = nullptr;
    Metres length;
    int circuit = 0;  ///< place in the building's list
};

/// What a scheme brings with it beside the run itself.
struct Extras {
    std::vector<Item> remedies;   ///< items of the book that findings asked for
    std::vector<Wired> circuits;  ///< those that were designed
};

/// The cables of the circuits designed.
template <class L>
std::vector<Wired> wired(const study::Figures<L>& figures) {
    std::vector<Wired> all;
    all.reserve(figures.circuits.size());
    for (const auto& design : figures.circuits) {
        all.push_back({design.option.cable, design.wired, static_cast<int>(design.place)});
    }
    return all;
}

/// Prices one scheme.
template <class L>
Price<L> price_of(L& ledger, const Book& book, const study::Setting<Silent>& setting,
                  const study::RunScheme& scheme, const Extras& extras);

}  // namespace toft::price
