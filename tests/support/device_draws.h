#pragma once
// Random devices of the embedded tables.

#include "tables/device.h"

namespace toft::support {

/// Any device at all.
const tables::Device& any_device();

/// Any device of which a larger one of the same standard and curve is in the tables.
const tables::Device& any_smaller_device();

/// A larger one of the same standard and curve; must exist.
const tables::Device& any_larger_than(const tables::Device& small);

/// Any current from 1 A to 20 kA, amperes.
double any_current();

/// Any device whose energy an energy class limits.
const tables::Device& any_device_of_a_class();

}  // namespace toft::support
