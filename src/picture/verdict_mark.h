#pragma once
// A verdict as a shape, told apart without colour: a ring with a tick (meets), a triangle
// (caution), a broken diamond with a question mark (not known), a full square with a cross (fails).

#include "drawing/scene.h"
#include "finding/rule.h"

namespace toft::picture {

/// The shape in a square of `size` around `centre`.
drawing::Items verdict_mark(rules::Verdict verdict, drawing::Point centre, double size = 12);

/// The shape and its word to the right of it; `at` is the left end of the baseline.
drawing::Items verdict_words(rules::Verdict verdict, drawing::Point at, double size = 11);

}  // namespace toft::picture
