#pragma once
// What the signs and colours of the board's picture mean.

#include "parts/word_column.h"

namespace toft::board {

/// The key from the column's y down. `phases` of the board.
void set_key(int phases, bool gives, parts::WordColumn& column);

}  // namespace toft::board
