#pragma once
// The pictures of ground works speak the language of `drawing` without saying so each time.

#include "drawing/scene.h"

namespace toft::digging {

using namespace drawing;
using drawing::Line;
using drawing::Point;

}  // namespace toft::digging
