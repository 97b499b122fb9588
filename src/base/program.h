#pragma once
// What this program is called.

namespace toft {

inline constexpr const char* program_name = "toft";
inline constexpr const char* program_version = "0.1.0";

}  // namespace toft
