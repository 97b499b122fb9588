#pragma once
// The outbuilding's earth: its terminal, where that gets its earth from, the metal bonded to it,
// its own electrode.

#include "diagram/ladder.h"
#include "picture/stage.h"

namespace toft::diagram {

/// `carried`: the run brings the house's earth. Precondition: the stage has a scheme.
void draw_far_earth(const picture::Stage& stage, bool carried, Ladder& ladder);

}  // namespace toft::diagram
