#pragma once
// What is said of the ground, as JSON text.

#include "groundwork/ground.h"

#include <string>

namespace toft::codec {

/// `toft-ground/1`, ending with a line feed.
std::string write_ground(const answer::GroundAnswer& ground);

}  // namespace toft::codec
