#pragma once
// Words as drawing exchange files of release 12 hold them: ASCII alone.

#include <string>
#include <string_view>
#include <vector>

namespace toft::dxf {

/// Longest value of a group, characters, kept below the 255 of the format.
inline constexpr std::size_t longest_value = 240;

/// `text` (UTF-8, cleaned as drawings clean it) in ASCII: anything else as \U+XXXX, beyond the
/// first plane as a pair of them; what would be read as a code (%%, ^, a backslash) so that it is
/// shown as it is.
std::string ascii(std::string_view text);

/// The text in parts whose ASCII fits into one group each, broken between characters.
std::vector<std::string> in_values(std::string_view text);

/// Name of a layer: the first word of `kind` in capitals, of letters, digits and _ only; SHEET for
/// a kind that leaves none.
std::string layer_name(std::string_view kind);

}  // namespace toft::dxf
