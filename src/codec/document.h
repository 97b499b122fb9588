#pragma once
// JSON text to a tree, with everything hostile refused first: size, depth, crowded objects, bad
// UTF-8, repeated keys, numbers out of range. Private to codec.

#include "base/outcome.h"
#include "codec/limits.h"

#include <nlohmann/json.hpp>

#include <string_view>

namespace toft::codec {

using Json = nlohmann::ordered_json;

/// Parses a whole document of at most `largest` bytes.
Outcome<Json> parse_document(std::string_view text, std::size_t largest = largest_document);

/// `pointer` extended by `key`, escaped as RFC 6901 asks.
std::string child_pointer(const std::string& pointer, std::string_view key);

}  // namespace toft::codec
