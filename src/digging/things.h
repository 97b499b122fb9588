#pragma once
// What lies in a trench, cut through at its diameter.

#include "drawing/scene.h"
#include "trench/lying.h"

namespace toft::digging {

/// `k` user units a metre.
drawing::Items lying_section(const trench::Lying& lying, drawing::Point centre, double k);

}  // namespace toft::digging
