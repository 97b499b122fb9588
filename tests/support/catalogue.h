#pragma once
// The embedded tables, loaded once for all tests of a program, and rows of them by name.

#include "tables/catalogue.h"

#include <string>
#include <vector>

namespace toft::support {

/// The embedded catalogue. Ends the program with the faults when it does not load.
const tables::Catalogue& catalogue();

/// Its tables about people.
inline const tables::Shock& shock_tables() { return catalogue().shock; }

/// The cable of that family, that many cores and that section in mm2; must exist.
const tables::Cable& cable(tables::Family family, int cores, double section_mm2);

/// The same for armoured XLPE copper.
const tables::Cable& cable(int cores, double section_mm2);

/// What all sizes of the family share.
const tables::Make& make(tables::Family family);

/// The plain copper conductors, thin to thick.
std::vector<const tables::Conductor*> copper_conductors();

/// The plain copper conductor of that section in mm2; must exist.
const tables::Conductor& conductor(double section_mm2);

/// The household fuse (BS 88-3) of that rating in amperes; must exist.
const tables::Device& fuse(double rating_a);

/// The first device of that standard, curve ("" for a fuse) and rating in amperes; must exist.
const tables::Device& device(const std::string& standard, const std::string& curve,
                             double rating_a);

/// The circuit breaker of that curve, rating in amperes and breaking capacity in kA; must exist.
const tables::Device& breaker(const std::string& curve, double rating_a, double breaking_ka = 6);

}  // namespace toft::support
