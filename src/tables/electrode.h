#pragma once
// Constants of the formulas for earth electrodes.

#include "base/interpolate.h"
#include "base/units.h"

#include <string>
#include <vector>

namespace toft::tables {

/// Constants of Dwight's formula for a star of buried wires.
struct StarRow {
    double arms = 0;
    Cited<double> c0, c1, c2, c4;
};

/// Soil that dries or freezes from above: its top multiplies its resistivity.
struct SeasonRow {
    std::string word;
    Cited<Metres> depth;
    Cited<double> factor;
};

struct ElectrodeConstants {
    std::vector<TablePoint> rods_in_line;    ///< lambda over the number of rods
    std::vector<TablePoint> rods_in_square;  ///< lambda over the rods along one side
    std::vector<StarRow> stars;              ///< by number of arms
    Cited<OhmMetres> concrete_low;           ///< resistivity of concrete in moist ground
    Cited<OhmMetres> concrete_high;
    std::vector<SeasonRow> seasons;
};

}  // namespace toft::tables
