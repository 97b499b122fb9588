#pragma once
// How far two-core armoured XLPE cable with its armour as the only protective conductor clears
// earth faults and survives them, device by device and size by size.

#include "tables/device.h"

#include <string>
#include <vector>

namespace toft::trade {

inline constexpr double longest_m = 50;      ///< how far is tried
inline constexpr double largest_ze = 0.35;   ///< the declared loop of TN-C-S
inline constexpr double smallest_ze = 0.05;  ///< about 5 kA, as stiff as houses get

/// Sections tried, in mm2.
const std::vector<double>& sections();

/// Devices tried: household fuses, B and C breakers of 16 to 63 A.
const std::vector<const tables::Device*>& devices();

/// "fuse 32", "B32", "C32".
std::string device_word(const tables::Device& device);

/// How one device and one section get on, at every loop from the smallest to the largest.
struct Reach {
    int metres = 0;          ///< the longest whole length up to which both rules are met
    std::string stopped_by;  ///< rule that fails one metre on; empty when nothing does
    bool carries = true;     ///< the cable, clipped alone at 30 °C, may stand behind that device
};

Reach reach_of(const tables::Device& device, double section_mm2);

/// docs/armour-table.md as it should read.
std::string armour_page();

}  // namespace toft::trade
