#pragma once
// How far apart cable is held, and how tightly it may be bent.

#include "tables/catalogue.h"

#include <string>

namespace toft::ware {

/// The spacing for cable that lies level; where its diameter is not in the tables, the closest.
Metres spacing_of(const tables::Catalogue& catalogue, const tables::Cable& cable);

/// Cleats or clips on a length, one at its start.
int fixings_on(Metres length, Metres spacing);

/// Times the overall diameter that the inner radius of a bend must have; 0 where no row tells.
double bend_times(const tables::Catalogue& catalogue, const tables::Cable& cable);

/// "117 mm (6 × 19.5 mm)"; where the diameter is not in the tables "6 × its diameter".
std::string bend_words(const tables::Catalogue& catalogue, const tables::Cable& cable);

}  // namespace toft::ware
