#pragma once
// How much of a document is ever read.

#include <cstddef>

namespace toft::codec {

inline constexpr std::size_t largest_document = 1u << 20;  ///< bytes
inline constexpr int deepest_document = 24;                ///< nested objects and lists

}  // namespace toft::codec
