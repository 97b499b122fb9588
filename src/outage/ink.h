#pragma once
// The picture of what goes dark speaks the language of `drawing` and `terrain`'s sheet without
// saying so each time.

#include "answer/answer.h"
#include "parts/ink.h"
#include "terrain/sheet.h"

namespace toft::outage {

using namespace drawing;
using drawing::Line;
using drawing::Point;
using guard::Certainty;
using terrain::Drawn;
using terrain::Space;

}  // namespace toft::outage
