#pragma once
// Bytes as text: RFC 4648, section 4.

#include <string>
#include <string_view>

namespace toft::pocket {

/// With padding, in one line.
std::string base64(std::string_view bytes);

}  // namespace toft::pocket
