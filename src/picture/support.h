#pragma once
// What holds, covers or guards the cable on each leg: saddles, tray, tube, trunking, insulation, a
// catenary wire, a duct, warning tape; and how deep or high it lies.

#include "picture/sketch.h"
#include "picture/stage.h"

namespace toft::picture {

/// Behind the cable. Precondition: the leg is one of the stage's run.
void draw_support(const Stage& stage, std::size_t leg, Sketch& sketch);

/// Height on paper of the tape above a buried leg.
double tape_level(const Stage& stage, std::size_t leg);

}  // namespace toft::picture
