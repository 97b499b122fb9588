#pragma once
// The board's picture speaks the language of the pictures' parts without saying so each time.

#include "parts/ink.h"
#include "parts/ways.h"

namespace toft::board {

using namespace parts;
using drawing::Line;
using drawing::Point;

}  // namespace toft::board
