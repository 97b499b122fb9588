#pragma once
// The methods of soil from readings that published examples are held against.

#include "published/methods.h"

namespace toft::published {

/// Resistivity from one reading of Wenner's pins.
Results four_pin_reading(const support::PublishedCase& c);
/// Layers from readings of Wenner's pins, given in ohms (`R.1`) or as resistivities (`rho.1`).
Results soil_fit(const support::PublishedCase& c);
/// Where the inner spike shows the true resistance, and what it shows where it stands.
Results fall_of_potential(const support::PublishedCase& c);

}  // namespace toft::published
