#pragma once
// The earthing walks of an answer as a JSON tree, and as a document of their own.

#include "walk/walk.h"

#include <string>
#include <vector>

namespace toft::codec {

/// {"format": "toft-why/1", "job": …, "walks": […]}: what `toft why --json` prints.
std::string write_why(const std::string& job, const std::vector<walk::Walk>& walks);

}  // namespace toft::codec
