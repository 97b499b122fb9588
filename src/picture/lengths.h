#pragma once
// The chain of lengths under the ground, one figure and a few words a leg, and the scales of the
// picture.

#include "picture/sketch.h"
#include "picture/stage.h"

namespace toft::picture {

/// Draws the chain with its words below, down to `foot`.
void draw_lengths(const Stage& stage, double foot, Sketch& sketch);

/// A bar of a round number of metres with what it stands for, and how depths are drawn; in `box`.
void draw_scales(const Stage& stage, const drawing::Box& box, Sketch& sketch);

}  // namespace toft::picture
