#pragma once
// Two devices in series on one paper: the band of each, and the currents at which the downstream
// one is sure to be the only one that opens.

#include "curves/log_paper.h"
#include "device/selectivity.h"

#include <vector>

namespace toft::curves {

/// Devices with what is said of them; either may be null.
struct PairShown {
    const tables::Device* upstream = nullptr;
    const tables::Device* downstream = nullptr;
    device::Selectivity<Silent> said;
    Amperes prospective;  ///< largest fault current at the downstream device
};

/// By its current and time the device is sure to have operated at the right of and above this line:
/// slow_edge with the overloads for which there are conventional currents.
std::vector<drawing::Point> clearing_edge(const LogPaper& paper, const tables::Device& device);

/// It is sure to hold at the left of and below this line: quick_edge, and between its corners no
/// less heat than at the next.
std::vector<drawing::Point> bearing_edge(const LogPaper& paper, const tables::Device& device);

/// Both bands with their names, full lines upstream and broken ones downstream; above the paper a
/// bar over the currents that are sure; upright the prospective current.
drawing::Items pair_plot(const LogPaper& paper, const PairShown& pair);

/// The lines of each device, for the legend too.
drawing::Style upstream_line(double width);
drawing::Style downstream_line(double width);

}  // namespace toft::curves
