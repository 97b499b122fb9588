#pragma once
// Metal that enters or frames the outbuilding, drawn coming from where it comes from, and its bond.

#include "picture/sketch.h"
#include "picture/stage.h"

namespace toft::picture {

/// Draws the parts from `left` on to the right, bonded to the terminal at `terminal`.
void draw_metalwork(const Stage& stage, drawing::Point terminal, double left, Sketch& sketch);

}  // namespace toft::picture
