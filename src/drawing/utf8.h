#pragma once
// Text from anywhere made safe to draw: valid UTF-8, one line, nothing that hides or reorders.

#include <string>
#include <string_view>

namespace toft::drawing {

/// The characters of `text` as they will be drawn. Bytes that are not UTF-8 (overlong forms,
/// surrogates and values past U+10FFFF among them) and noncharacters become U+FFFD, one for each
/// maximal broken piece; tabs and line ends become spaces; other control characters and the marks
/// that turn the writing direction are left out.
std::u32string drawable(std::string_view text);

/// `text` with line feeds kept, for splitting into lines; otherwise as `drawable`.
std::u32string drawable_lines(std::string_view text);

void append_utf8(std::string& out, char32_t character);

std::string to_utf8(std::u32string_view text);

}  // namespace toft::drawing
