#pragma once
// The house: its intake, how the supply is earthed, its board or the new unit, and what the run is
// fed from.

#include "picture/sketch.h"
#include "picture/stage.h"

namespace toft::picture {

/// Where the run leaves the unit that feeds it.
drawing::Point feed_point(const Stage& stage);

/// The earth terminal of the house, its right end.
drawing::Point house_terminal(const Stage& stage);

/// Behind the run.
void draw_house(const Stage& stage, Sketch& sketch);

/// The residual current device between the unit and the run, if there is one: in front of the run.
void draw_head_rcd(const Stage& stage, Sketch& sketch);

}  // namespace toft::picture
