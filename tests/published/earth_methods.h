#pragma once
// The methods of electrodes and their fields that published examples are held against.

#include "published/methods.h"

namespace toft::published {

/// Volts between the top of a rod and the ground a pace away, for what the case gives.
Results step_beside_rod(const support::PublishedCase& c);
/// Rods round a rectangle or in a square, by formula and as a field.
Results rods_round_rectangle(const support::PublishedCase& c);
/// A buried mesh by formula.
Results mesh(const support::PublishedCase& c);

}  // namespace toft::published
