#pragma once
// Electrodes that are meant to be apart but touch, cross or lie in each other: their metal is one.

#include "base/outcome.h"
#include "field/wire.h"

#include <vector>

namespace toft::field {

/// One fault for each pair of electrodes of which some wires are nearer, axis to axis, than their
/// radii together.
Faults contacts(const std::vector<Wire>& wires);

}  // namespace toft::field
