#pragma once
// The same drawing for a dark page.

#include "drawing/scene.h"

namespace toft::drawing {

/// `scene` with each colour of the palette exchanged for its colour of the night. Other colours,
/// those of conductors among them, stay.
Scene at_night(Scene scene);

}  // namespace toft::drawing
