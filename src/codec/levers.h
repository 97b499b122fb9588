#pragma once
// The levers of a job as JSON.

#include "answer/levers.h"

#include <string>

namespace toft::codec {

/// The document of `toft levers`, format toft-levers/1.
std::string write_levers(const answer::LeversAnswer& answer);

}  // namespace toft::codec
