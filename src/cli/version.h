#pragma once
// What this program calls itself.

namespace toft::cli {

inline const char* version() { return "toft 0.1.0"; }

}  // namespace toft::cli
