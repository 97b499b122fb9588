#pragma once
// What a run can still feed, as JSON.

#include "answer/later.h"

#include <string>

namespace toft::codec {

/// The document of `toft later`, format toft-later/1.
std::string write_later(const answer::LaterAnswer& answer);

}  // namespace toft::codec
