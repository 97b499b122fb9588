#pragma once
// The outbuilding's board: its main switch, its bar, and a way for each circuit with the devices
// that guard it, its cable and what hangs on it.

#include "diagram/ladder.h"
#include "parts/ways.h"
#include "picture/stage.h"

namespace toft::diagram {

/// What stands beside a way: its device and cable as designed, else as stated, and its figures.
Note way_note(const parts::Way& way, int board_phases);

/// Precondition: the stage has a scheme.
void draw_far_board(const picture::Stage& stage, Ladder& ladder);

}  // namespace toft::diagram
