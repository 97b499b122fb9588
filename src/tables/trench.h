#pragma once
// What a trench for cable is like by the habits of the trade.

#include "base/citation.h"
#include "base/units.h"

#include <string>
#include <vector>

namespace toft::tables {

/// Shares are of 1.
struct TrenchSizes {
    Cited<Metres> width;          ///< of a trench with one or two cables
    Cited<Metres> bedding_below;  ///< sand
    Cited<Metres> bedding_above;
    Cited<Metres> tape_above;   ///< the cable
    Cited<Metres> tape_width;   ///< of the tape itself
    Cited<Metres> tape_covers;  ///< width of cables that one tape warns of
    Cited<Metres> power_apart;  ///< clear, between cables with power
    Cited<Metres> data_apart;   ///< clear, of data from power
    Cited<Metres> pipe_apart;   ///< clear, of cable from water, gas and the like
    Cited<Metres> side_clear;   ///< of the outermost thing from the trench's side
    Cited<double> bulking;
    Cited<double> sand_kg_m3;
    Cited<double> sand_waste, tape_waste, duct_waste;
    Cited<double> small_bag_kg, bulk_bag_kg;
    Cited<Metres> data_duct;       ///< outer diameter
    Cited<Metres> position_doubt;  ///< of services on plans, sideways
};

/// What a surface is made good with.
struct MadeGood {
    std::string surface;
    Metres layer;
    std::string says;
    const Citation* citation = nullptr;
};

/// What is photographed; `when` is a word of the table: always, duct, joint …
struct PhotoStep {
    std::string key, says, when;
    const Citation* citation = nullptr;
};

struct Trench {
    TrenchSizes sizes;
    std::vector<MadeGood> made_good;
    std::vector<PhotoStep> photos;  ///< in the order they are taken
};

}  // namespace toft::tables
