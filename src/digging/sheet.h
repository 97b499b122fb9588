#pragma once
// What the sheets of ground works share: title above, cautions below.

#include "digging/measured.h"
#include "parts/word_column.h"

#include <string>

namespace toft::digging {

inline constexpr double edge = 12;

void sheet_head(parts::WordColumn& column, const std::string& kind, const std::string& title);

/// Who decides; before digging.
void sheet_foot(parts::WordColumn& column);

/// Words of the body and of second rank.
void say(parts::WordColumn& column, const std::string& words);
void say_small(parts::WordColumn& column, const std::string& words);

/// The caution of whoever digs, the same on picture and paper.
const char* digging_caution();

}  // namespace toft::digging
