#pragma once
// The operator's part and where the house gets its earth: supply, cut-out, meter, main earthing
// terminal, and for TT the house's electrode.

#include "diagram/ladder.h"
#include "picture/stage.h"

namespace toft::diagram {

/// Draws down to below the main earthing terminal; the protective conductor goes on from there.
void draw_intake(const picture::Stage& stage, Ladder& ladder);

}  // namespace toft::diagram
