#pragma once
// What can be read in a paper before it is laid out.

#include "page/blocks.h"

#include <string>

namespace toft::paper {

/// All words of a block, a line each; of a picture those below it and those in it.
std::string words_of(const page::Block& block);

/// True when `text` holds `word` by itself: with no letter right before or after it, but for an s
/// behind it. A single letter is a unit: it counts behind a figure only.
bool holds_word(const std::string& text, const std::string& word);

}  // namespace toft::paper
