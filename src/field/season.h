#pragma once
// A dry or frozen crust over the soil that was surveyed. Drying and frost work from the surface
// down to a depth and multiply the resistivity of whatever soil lies within it; a layer that
// reaches deeper keeps its own resistivity below. Depth and factor are the caller's: no published
// figure for this country is known. Page: docs/methods/season.md.

#include "field/soil.h"

namespace toft::field {

struct Crust {
    Metres depth{};     ///< from the surface; 0 for none
    double factor = 1;  ///< of the resistivity within it; at least 1
};

/// The soil under a crust. Refuses depths below 0, factors below 1 (wet seasons are no worst case)
/// and what faults_of() refuses, before or after.
Outcome<Strata> with_crust(const Strata& soil, const Crust& crust);

}  // namespace toft::field
