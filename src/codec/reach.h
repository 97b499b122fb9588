#pragma once
// How far cables reach, as JSON text.

#include "answer/reach.h"

#include <string>

namespace toft::codec {

/// `toft-reach/1`, ending with a line feed.
std::string write_reach(const answer::ReachAnswer& reach);

}  // namespace toft::codec
