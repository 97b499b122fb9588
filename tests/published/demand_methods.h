#pragma once
// The methods of demand that published examples are held against.

#include "published/methods.h"

namespace toft::published {

/// Demand of circuits X, Y and Z of one load of one kind of premises, no socket in a control unit
/// unless the case gives one.
Results allowance(const support::PublishedCase& c);
/// Demand of a household's cooker, shower, lights and rings by the program's own classes.
Results household_demand(const support::PublishedCase& c);
/// Current of one circuit of that many watts, and the rating its kind usually has.
Results circuit_current(const support::PublishedCase& c);
/// Current of the neutral of three equal lines with a share of third harmonic.
Results neutral_with_harmonics(const support::PublishedCase& c);
/// The operators' bounds, as power at 230 V.
Results operators_bounds(const support::PublishedCase& c);

}  // namespace toft::published
