#pragma once
// The diagram speaks the language of `symbol`, `drawing` and the pictures' words without saying so
// each time.

#include "symbol/pen.h"

namespace toft::diagram {

using namespace symbol;
using drawing::Line;
using drawing::Point;

}  // namespace toft::diagram
