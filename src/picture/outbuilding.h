#pragma once
// The building at the end of the run: what it is made of and whether it stands in the ground, its
// board and RCDs, its earth terminal, its own electrode when it has one.

#include "picture/sketch.h"
#include "picture/stage.h"

namespace toft::picture {

/// Walls, roof, floor: behind the run.
void draw_outbuilding_shell(const Stage& stage, Sketch& sketch);

/// Board, terminal, electrode and metalwork: in front of the run.
void draw_outbuilding_fittings(const Stage& stage, Sketch& sketch);

}  // namespace toft::picture
