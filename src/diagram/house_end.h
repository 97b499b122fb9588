#pragma once
// What stands between the meter and the run: the house's board with a way for it, or a new unit on
// the tails, and the residual current device at the head of the run when there is one.

#include "diagram/ladder.h"
#include "picture/stage.h"

namespace toft::diagram {

/// Precondition: the stage has a scheme.
void draw_house_end(const picture::Stage& stage, Ladder& ladder);

/// The house's own board where no scheme says what feeds the run.
void draw_house_board_alone(const picture::Stage& stage, Ladder& ladder);

}  // namespace toft::diagram
