#pragma once
// Currents through a body that touches the metal: a row for each condition, a column for each way.

#include "groundwork/ground.h"
#include "parts/word_column.h"

namespace toft::terrain {

/// Nothing when no way has a body current. The columns bear the ways' letters.
void body_table(const answer::LostNeutralAnswer& fault, parts::WordColumn& column);

}  // namespace toft::terrain
