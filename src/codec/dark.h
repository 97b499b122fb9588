#pragma once
// What goes dark in one scheme, as a document of its own.

#include "answer/answer.h"

#include <string>

namespace toft::codec {

/// {"format": "toft-dark/1", "job": …, "scheme": …, "residual": […], "dark": {…}}: what `toft dark
/// --json` prints; schema/dark.json.
std::string write_dark(const std::string& job, const answer::SchemeAnswer& scheme);

}  // namespace toft::codec
