#pragma once
// Plain text for a screen: wrapping, bars, columns. Widths count characters, not bytes.

#include <string>
#include <vector>

namespace toft::cli {

inline constexpr std::size_t screen_width = 88;

/// Characters of UTF-8 text.
std::size_t width_of(const std::string& text);

/// `text` filled with blanks to `width` characters.
std::string padded(const std::string& text, std::size_t width);

/// `text` broken at blanks to the screen's width; every line but the first starts with `indent`
/// blanks, the first with `lead`.
std::string wrapped(const std::string& lead, const std::string& text, std::size_t indent);

/// A bar of `use` (0 to 1 fills it; more shows an overrun mark).
std::string bar(double use, std::size_t cells);

}  // namespace toft::cli
