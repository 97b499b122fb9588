#pragma once
// What the tables know of cables and conductors.

#include "base/citation.h"
#include "base/interpolate.h"
#include "base/temperature.h"
#include "base/units.h"

#include <array>
#include <string>
#include <vector>

namespace toft::tables {

/// A make of cable by construction and insulation.
enum class Family { armoured_xlpe_copper };

const char* family_word(Family family);

/// Installation reference methods with tabulated ratings: clipped direct, in free air or on tray,
/// in the ground.
enum class ReferenceMethod { c, e, d };
inline constexpr std::size_t reference_methods = 3;

/// Plain copper of one section.
struct Conductor {
    SquareMillimetres section;
    Cited<OhmsPerMetre> r20;  ///< largest d.c. resistance at 20 °C
};

/// One size of one family. Ratings and drop are those of two loaded conductors, single phase.
struct Cable {
    Family family = Family::armoured_xlpe_copper;
    int cores = 2;
    SquareMillimetres section;
    Cited<OhmsPerMetre> r20;         ///< of one core at 20 °C
    Cited<OhmsPerMetre> x;           ///< of one core at 50 Hz
    Cited<OhmsPerMetre> armour_r20;  ///< of the armour at 20 °C, d.c.
    Cited<SquareMillimetres> armour_area;
    Cited<Metres> overall;
    std::array<Cited<Amperes>, reference_methods> rating;
    Cited<OhmsPerMetre>
        drop_r;  ///< tabulated mV/A/m, resistive part, line and neutral together, hot
    Cited<OhmsPerMetre> drop_x;  ///< reactive part
};

/// Constants of a conductor metal.
struct Material {
    Cited<PerKelvin> alpha20;  ///< rise of resistance per kelvin, referred to 20 °C
    Cited<double> beta;        ///< reciprocal coefficient at 0 °C, in °C
    Cited<double> big_k;       ///< adiabatic constant K of IEC 60364-5-54 Annex A, A s^0.5/mm2
};

/// A conductor's temperatures before and after the worst fault it may see, and its k between them.
struct FaultHeat {
    Cited<Celsius> initial;
    Cited<Celsius> final;
    Cited<HeatConstant> k;
};

/// Factors and constants that do not depend on the size of the cable.
struct CableConstants {
    Material copper;
    Material steel;
    FaultHeat live;
    FaultHeat core;
    FaultHeat armour;
    FaultHeat separate;
    Cited<double> armour_ac_factor;          ///< a.c. over d.c. resistance of the armour
    Cited<OhmsPerMetre> armour_x;            ///< reactance of the armour loop
    std::vector<TablePoint> ambient_air;     ///< Ca over °C
    std::vector<TablePoint> ambient_ground;  ///< Ca over °C
    std::vector<TablePoint> soil_direct;     ///< Cs over K m/W
    std::vector<TablePoint> soil_duct;
    std::vector<TablePoint> depth_direct;  ///< Cd over metres
    std::vector<TablePoint> depth_duct;
    std::vector<TablePoint> grouped_clipped;  ///< Cg over circuits, this one included
    std::vector<TablePoint> grouped_tray;
    std::vector<TablePoint> grouped_direct;
    std::vector<TablePoint> grouped_duct;
    std::vector<TablePoint> insulation;  ///< Ci over millimetres of cable in thermal insulation
};

}  // namespace toft::tables
