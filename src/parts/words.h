#pragma once
// Words cut to the room they have, and figures with their units as pictures write them.

#include "drawing/text_style.h"
#include "site/fact.h"

#include <string>
#include <string_view>
#include <vector>

namespace toft::parts {

/// `text` on one line no wider than `width` at `size`; what does not fit gives way to "…".
std::string shortened(std::string_view text, double width, double size,
                      drawing::Weight weight = drawing::Weight::normal);

/// `text` broken at spaces into at most `most` lines, none wider than `width` at `size`. Words too
/// wide for a line are shortened, and the last line ends in "…" when some are left over.
std::vector<std::string> paragraph(std::string_view text, double width, double size,
                                   std::size_t most);

/// `words` broken at spaces into at most `most` lines, none wider than `width`; a unit stays with
/// its figure, and what is left over gives way to "…".
std::vector<std::string> broken(const std::string& words, double width,
                                const drawing::TextStyle& style, std::size_t most);

/// "10 mm²".
std::string mm2(double section);

/// "21 m", "18 to 24 m", or "length not known".
std::string length_words(const site::Fact<Metres>& length);

/// The name, or where it has none its id.
std::string name_or(const std::string& name, const std::string& id);

/// `word` with a capital at its start when that is a plain letter.
std::string capital(std::string word);

}  // namespace toft::parts
