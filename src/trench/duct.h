#pragma once
// The duct that cables are pulled into, by how much of its bore they fill.
// Page: docs/methods/duct.md.

#include "tables/catalogue.h"

#include <string>
#include <vector>

namespace toft::trench {

/// "19.5 mm".
std::string mm_words(Metres length);

/// Share of the bore's area that cables of those diameters fill.
double duct_fill(Metres bore, const std::vector<Metres>& cables);

/// `row` is null where a diameter is not known (0) or no duct of the tables is wide enough.
struct DuctChoice {
    const tables::DuctRow* row = nullptr;
    double fill = 0;       ///< at the nominal diameters
    double fill_most = 0;  ///< where the maker's cable is thicker
    std::string why;       ///< in plain words
};

/// The narrowest duct for cables of those overall diameters. Bends are taken to be there.
DuctChoice duct_for(const tables::Catalogue& catalogue, const std::vector<Metres>& cables);

}  // namespace toft::trench
