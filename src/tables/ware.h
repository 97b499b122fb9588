#pragma once
// What is bought and how it comes: glands, ducts, fixings, drums, and what laying asks of a cable.

#include "base/citation.h"
#include "base/units.h"
#include "tables/cable.h"

#include <array>
#include <string>
#include <vector>

namespace toft::tables {

/// A size of gland and the cable it takes.
struct GlandRow {
    std::string size;   ///< "20S", "25"
    Metres under_most;  ///< thickest cable under its armour
    Metres over_from;   ///< of the diameter over the sheath
    Metres over_to;
    const Citation* citation = nullptr;
};

/// Where a gland sits.
enum class GlandPlace { dry, outdoors, wet };
inline constexpr std::size_t gland_places = 3;

const char* gland_place_word(GlandPlace place);

struct GlandType {
    std::string type;  ///< "BW", "CW", "E1W"
    std::string seals;
    const Citation* citation = nullptr;
};

/// Round duct in the ground.
struct DuctRow {
    Metres outside;  ///< that it is sold by
    Metres bore;
    const Citation* citation = nullptr;
};

/// Distance of cleats or clips for cable of more than `over` up to `to` in diameter.
struct SupportRow {
    bool armoured = true;
    Metres over, to;
    Metres level, upright;
    const Citation* citation = nullptr;
};

/// Smallest bending radius of cable with cores of more than `over` up to `to`.
struct BendRow {
    bool armoured = true;
    SquareMillimetres over, to;
    double times = 0;  ///< the overall diameter
    const Citation* citation = nullptr;
};

/// What is known of a cable beside its overall diameter.
struct BuildRow {
    Family family = Family::armoured_xlpe_copper;
    int cores = 2;
    SquareMillimetres section;
    Metres under_armour;  ///< diameter
    double kg_per_metre = 0;
    const Citation* citation = nullptr;
};

/// Overall diameter of a single core that is sold as protective conductor.
struct SingleRow {
    SquareMillimetres section;
    Metres overall;
    const Citation* citation = nullptr;
};

/// A length that something is sold in.
struct SoldRow {
    std::string what;  ///< cable, duct, tape
    Metres length;
    const Citation* citation = nullptr;
};

/// An item of a price book in the words of the counter.
struct ItemRow {
    std::string item;
    std::string what;
    const Citation* citation = nullptr;
};

struct Ware {
    std::vector<GlandRow> glands;  ///< by rising size
    std::array<GlandType, gland_places> gland_types;
    std::vector<DuctRow> ducts;  ///< by rising bore
    std::vector<SupportRow> supports;
    std::vector<BendRow> bends;
    std::vector<BuildRow> builds;
    std::vector<SingleRow> singles;  ///< by rising section
    std::vector<SoldRow> sold;       ///< by rising length
    std::vector<ItemRow> items;

    Cited<double> diameter_spread;  ///< share by which makers differ
    Cited<double> duct_fill;        ///< largest share of a bore that cables may fill
    Cited<double> duct_ratio;       ///< least bore over the diameter of one cable
    Cited<double> duct_bends;       ///< degrees between two points to pull from
    Cited<double> eye_copper;       ///< newtons per mm2 of all conductors
    Cited<double> eye_aluminium;
    Cited<double> stocking;      ///< newtons per square of the overall diameter in mm
    Cited<double> friction_dry;  ///< of a sheath in a duct
    Cited<double> friction_wet;  ///< … with lubricant
    Cited<double> spare_pairs;   ///< of glands, on top of what is built in
};

}  // namespace toft::tables
