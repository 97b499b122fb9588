#pragma once
// How much of a document is ever read.

#include <cstddef>

namespace toft::codec {

inline constexpr std::size_t largest_document = 1u << 20;  ///< bytes
inline constexpr std::size_t deepest_document = 24;        ///< nested objects and lists
inline constexpr std::size_t most_keys = 200;              ///< in one object
inline constexpr std::size_t most_values = 200'000;        ///< in the whole text
inline constexpr std::size_t most_faults = 1000;           ///< noted of one document

}  // namespace toft::codec
