#pragma once
// What a standard promises of a device: the edge where it is sure to have operated, the edge up to
// which it is sure to hold, and the band between, in which it may do either.

#include "curves/log_paper.h"
#include "tables/device.h"

#include <vector>

namespace toft::curves {

/// By its current the device is sure to have operated at the right of and above this line: straight
/// between the points, upright above the first, level beyond the last up to the breaking capacity.
/// Empty for a device without points.
std::vector<drawing::Point> slow_edge(const LogPaper& paper, const tables::Device& device);

/// The device is sure to hold at the left of and below this line: a staircase, for between two
/// points nothing is promised. Empty where nothing is.
std::vector<drawing::Point> quick_edge(const LogPaper& paper, const tables::Device& device);

/// Band and edges; the two sides named where there is room. Without a quick edge the slow one
/// alone.
drawing::Items band(const LogPaper& paper, const tables::Device& device);

}  // namespace toft::curves
