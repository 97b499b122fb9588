#pragma once
// The ground and the run through it: legs at their height or depth, ducts, warning tape, surfaces,
// and the chain of lengths below.

#include "picture/sketch.h"
#include "picture/stage.h"

namespace toft::picture {

/// Soil, ground line and surfaces: behind everything else.
void draw_ground(const Stage& stage, Sketch& sketch);

/// The cable of each stretch, the boxes between, a conductor beside it, and what holds or covers
/// them.
void draw_route(const Stage& stage, Sketch& sketch);

/// What a leg is, in words: "buried direct under lawn", "overhead over lawn, 5.5 m high".
std::string leg_words(const site::Leg& leg);

}  // namespace toft::picture
