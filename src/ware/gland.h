#pragma once
// The gland for an armoured cable: size by the diameters over the sheath and under the armour, type
// by the place. Page: docs/methods/gland.md.

#include "tables/catalogue.h"

#include <string>

namespace toft::ware {

/// `row` is null where the cable has no armour or no size of the tables is sure to take it.
struct GlandChoice {
    const tables::GlandRow* row = nullptr;
    const tables::GlandType* type = nullptr;
    std::string why;  ///< in plain words
};

/// The smallest size that takes the cable though its maker differs from the nominal diameters.
GlandChoice gland_for(const tables::Catalogue& catalogue, const tables::Cable& cable,
                      tables::GlandPlace place);

}  // namespace toft::ware
