#pragma once
// Curves as short straight lines.

#include "drawing/path.h"

#include <vector>

namespace toft::dxf {

struct Stroke {
    std::vector<drawing::Point> points;
    bool closed = false;
};

/// The strokes of a path; curves in `pieces` lines each.
std::vector<Stroke> strokes_of(const drawing::Path& path, int pieces = 16);

}  // namespace toft::dxf
