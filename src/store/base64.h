#pragma once
// Bytes as text and back: base64 with padding (RFC 4648, section 4). Private to store.

#include <optional>
#include <string>
#include <string_view>

namespace toft::store {

std::string to_base64(std::string_view bytes);

/// Nothing for what `to_base64` would not have written.
std::optional<std::string> from_base64(std::string_view text);

}  // namespace toft::store
