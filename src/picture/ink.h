#pragma once
// Pictures speak the language of `drawing` and of their `parts` without saying so each time. The
// names that mean something else at the root of the project (a point of a curve, a line of working)
// are chosen here, once.

#include "parts/ink.h"

namespace toft::picture {

using namespace drawing;
using namespace parts;
using drawing::Line;
using drawing::Point;

}  // namespace toft::picture
