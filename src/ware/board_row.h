#pragma once
// The board of a building to be bought: how many ways, and of what it is made.

#include "ware/draft.h"

namespace toft::ware {

/// "at least 7 ways": circuits as the bill counts them, runs that start there, spare ways asked
/// for; empty where there are none.
std::string ways_words(const RunBill& part);

/// Fills in a row that has its name already. Where the building has its own electrode and armour
/// comes in, the board is one that such armour cannot touch.
Draft board_row(Draft named, const RunBill& part);

}  // namespace toft::ware
