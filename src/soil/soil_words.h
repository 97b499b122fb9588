#pragma once
// A fit in plain words.

#include "soil/soil_fit.h"

namespace toft::soil {

/// What the fit says of the soil, of its limits and of the odd reading.
std::string words_of(const SoilFit& fit, std::size_t readings);

}  // namespace toft::soil
