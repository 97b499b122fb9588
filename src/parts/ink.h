#pragma once
// Pictures speak the language of `drawing` without saying so each time. The names that mean
// something else at the root of the project (a point of a curve, a line of working) are chosen
// here, once.

#include "drawing/scene.h"

namespace toft::parts {

using namespace drawing;
using drawing::Line;
using drawing::Point;

}  // namespace toft::parts
