#pragma once
// What a run can still feed, as JSON.

#include "outlook/later.h"

#include <string>

namespace toft::outlook {

/// The document of `toft later`, format toft-later/1.
std::string write_later(const LaterAnswer& answer);

}  // namespace toft::outlook
