#pragma once
// The curves speak the language of `drawing` and `picture` without saying so each time; names that
// mean something else at the root of the project are chosen here, once.

#include "drawing/scene.h"
#include "picture/stage.h"

namespace toft::curves {

using namespace drawing;
using drawing::Line;
using drawing::Point;
using picture::margin;
using picture::sheet_high;
using picture::sheet_wide;

/// Size of ordinary words, user units.
inline constexpr double letters = 11;

}  // namespace toft::curves
