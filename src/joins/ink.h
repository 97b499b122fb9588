#pragma once
// The conductor diagram speaks the language of the pictures' parts without saying so each time.

#include "parts/ink.h"

namespace toft::joins {

using namespace parts;
using drawing::Line;
using drawing::Point;

}  // namespace toft::joins
