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

inline constexpr double plain_letters = 11;   ///< size of words beside what they are about
inline constexpr double narrow_letters = 12;  ///< the same on a narrow screen

}  // namespace toft::picture
