#pragma once
// JSON text to a tree, with everything hostile refused first: size, depth, crowded objects, too
// many values, bad UTF-8, repeated keys, numbers out of range. For the rooms that handle JSON:
// codec, merge, store.

#include "base/outcome.h"
#include "codec/limits.h"

#include <nlohmann/json.hpp>

#include <string_view>

namespace toft::codec {

using Json = nlohmann::ordered_json;

/// How much of a text is read.
struct Bounds {
    std::size_t bytes = largest_document;
    std::size_t depth = deepest_document;
    std::size_t keys = most_keys;
    std::size_t values = most_values;  ///< objects and lists among them
};

/// Parses a whole document.
Outcome<Json> parse_document(std::string_view text, const Bounds& bounds = {});

/// `pointer` extended by `key`, escaped as RFC 6901 asks.
std::string child_pointer(const std::string& pointer, std::string_view key);

}  // namespace toft::codec
