#pragma once
// The run from the house's device to the outbuilding: its ends, each stretch of cable, the boxes
// between them, the armour and what it is joined to, a conductor beside it.

#include "diagram/ladder.h"
#include "diagram/stretches.h"

namespace toft::diagram {

/// Draws the run. The protective conductor of the outbuilding goes on from the far end when the
/// run carries it there. The figures of the whole run stand beside its one
/// cable, or where the cable changes beside the near end; those of the loop at the far end.
void draw_run(const RunLine& run, const answer::SchemeAnswer& scheme, Ladder& ladder);

}  // namespace toft::diagram
