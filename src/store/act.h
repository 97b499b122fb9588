#pragma once
// Who did something, when, and in which words.

#include <cstddef>
#include <string>

namespace toft::store {

class Store;

inline constexpr std::size_t longest_author = 200;  ///< bytes
inline constexpr std::size_t longest_words = 2000;  ///< bytes of a note, a unit, a title

/// One act upon the store.
struct Act {
    std::string at;    ///< UTC, ISO 8601: "2026-11-29T11:05:00Z"; lists are ordered by it
    std::string by;    ///< the author as they call themselves; may be empty
    std::string what;  ///< words for the history; may be empty
};

}  // namespace toft::store
