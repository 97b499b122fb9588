#pragma once
// How the run's cable ends: the armour of its longest armoured stretch at both ends, or what is
// done with a cable that has none.

#include "drawing/scene.h"
#include "picture/stage.h"

#include <string>

namespace toft::picture {

/// Precondition of both: the stage has a scheme.
std::string ends_title(const Stage& stage);
drawing::Items cable_ends(const Stage& stage, const drawing::Box& box);

}  // namespace toft::picture
