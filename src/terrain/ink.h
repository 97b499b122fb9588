#pragma once
// The pictures of the ground speak the language of `drawing` and `parts` without saying so each
// time; names that mean something else at the root of the project are chosen here, once.

#include "groundwork/ground.h"
#include "parts/ink.h"
#include "site/job.h"

namespace toft::terrain {

using namespace drawing;
using drawing::Line;
using drawing::Point;

}  // namespace toft::terrain
