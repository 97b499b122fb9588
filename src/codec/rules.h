#pragma once
// The rulebook as JSON text.

#include <string>

namespace toft::codec {

/// All rules, `toft-rules/1`.
std::string write_rules();

}  // namespace toft::codec
