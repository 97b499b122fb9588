#pragma once
// What the tables know of cables and conductors.

#include "base/citation.h"
#include "base/interpolate.h"
#include "base/temperature.h"
#include "base/units.h"

#include <array>
#include <cstddef>
#include <optional>
#include <string>
#include <vector>

namespace toft::tables {

/// A make of cable by construction and insulation.
enum class Family {
    armoured_xlpe_copper,
    armoured_pvc_copper,
    armoured_xlpe_aluminium,
    flat_twin_and_earth,
    unarmoured_xlpe_copper,
    unarmoured_pvc_copper
};
inline constexpr std::size_t families = 6;

const char* family_word(Family family);

enum class Metal { copper, aluminium, steel };

const char* metal_word(Metal metal);

/// Insulation by the temperature it bears all its life.
enum class Insulation { thermoplastic_70, thermosetting_90 };

const char* insulation_word(Insulation insulation);

/// How a length of cable lies, as far as its rating is concerned.
enum class Laying {
    clipped,
    tray,
    free_air,
    conduit,
    trunking,
    insulated,
    above_ceiling,
    direct,
    duct,
    overhead
};
inline constexpr std::size_t layings = 10;

const char* laying_word(Laying laying);

constexpr bool in_ground(Laying laying) {
    return laying == Laying::direct || laying == Laying::duct;
}

/// Installation reference methods with tabulated ratings: in conduit in an insulated wall (A) or on
/// a wall (B), clipped direct (C), in free air or on tray (E), in the ground (D); and those of flat
/// cable above a ceiling (100, 101) or in a wall (102, 103), by how much insulation touches it.
enum class ReferenceMethod { a, b, c, e, d, m100, m101, m102, m103 };
inline constexpr std::size_t reference_methods = 9;

const char* method_word(ReferenceMethod method);

/// What a word of the tables means; none where they know no such word.
std::optional<Family> family_of(const std::string& word);
std::optional<Metal> metal_of(const std::string& word);
std::optional<Insulation> insulation_of(const std::string& word);
std::optional<Laying> laying_of(const std::string& word);
std::optional<ReferenceMethod> method_of(const std::string& word);

/// Plain conductor of one section.
struct Conductor {
    Metal metal = Metal::copper;
    SquareMillimetres section;
    Cited<OhmsPerMetre> r20;  ///< largest d.c. resistance at 20 °C
    bool offered = true;      ///< it may be bought: the price book in use has a price for it
};

/// What the tables say of a cable with so many loaded cores. A figure without a citation is not
/// tabulated.
struct Duty {
    std::array<Cited<Amperes>, reference_methods> rating;
    Cited<OhmsPerMetre> drop_r;  ///< tabulated mV/A/m hot, resistive: line and neutral together,
                                 ///< or line to line for three loaded cores
    Cited<OhmsPerMetre> drop_x;  ///< reactive part
};

/// One size of one family.
struct Cable {
    Family family = Family::armoured_xlpe_copper;
    const Citation* listed = nullptr;  ///< where it stands that this size is made
    int cores = 2;  ///< insulated cores; flat twin and earth has two and a bare one
    SquareMillimetres section;
    SquareMillimetres cpc;           ///< of the core that may protect; 0 where none can. Two- and
                                     ///< four-core cable has none to spare
    Cited<OhmsPerMetre> r20;         ///< of one core at 20 °C
    Cited<OhmsPerMetre> cpc_r20;     ///< of the core that may protect
    Cited<OhmsPerMetre> x;           ///< of one core at 50 Hz
    Cited<OhmsPerMetre> armour_r20;  ///< of the armour at 20 °C, d.c.; armoured families only
    Cited<SquareMillimetres> armour_area;
    Cited<Metres> overall;  ///< outer diameter; armoured families only
    Duty two;               ///< two loaded cores: single phase
    Duty three;             ///< three loaded cores; nothing in it below three cores
    bool offered = true;    ///< it may be bought: the price book in use has a price for it

    const Duty& duty(int phases) const { return phases == 3 ? three : two; }
};

/// Constants of a conductor metal.
struct Material {
    Cited<PerKelvin> alpha20;  ///< rise of resistance per kelvin, referred to 20 °C
    Cited<Kelvins> beta;       ///< below 0 °C the resistance would reach zero by straight line
    Cited<double> big_k;       ///< adiabatic constant K of IEC 60364-5-54 Annex A, A s^0.5/mm2
};

/// A conductor's temperatures before and after the worst fault it may see, and its k between them.
struct FaultHeat {
    Cited<Celsius> initial;
    Cited<Celsius> final;
    Cited<HeatConstant> k;
};

/// What all sizes of a family share.
struct Make {
    Family family = Family::armoured_xlpe_copper;
    const Citation* listed = nullptr;  ///< where its construction stands
    std::string standard;              ///< "BS 5467"
    Metal metal = Metal::copper;
    Insulation insulation = Insulation::thermosetting_90;
    bool armoured = true;
    FaultHeat live;
    FaultHeat core;                          ///< of a protective core within the cable
    FaultHeat armour;                        ///< of steel; armoured families only
    std::vector<TablePoint> ambient_air;     ///< Ca over °C
    std::vector<TablePoint> ambient_ground;  ///< Ca over °C
    /// Reference method that serves each laying; none where no rating is tabulated.
    std::array<std::optional<ReferenceMethod>, layings> method;
    std::array<const Citation*, layings> method_from{};  ///< where each stands
    /// Whether Ci comes on top of that method's rating when the cable lies in insulation.
    bool insulation_factor = true;
};

/// A row of the factors for third harmonics in three loaded lines and their neutral.
struct HarmonicStep {
    double to = 0;  ///< third harmonic in per cent of the line current, from the row before on
    bool by_neutral = false;  ///< the neutral's current is held against the rating, not the lines'
    Cited<double> factor;
};

/// Factors and constants that belong to no one family.
struct CableConstants {
    Material copper;
    Material aluminium;
    Material steel;
    FaultHeat separate;                   ///< of a separate copper conductor
    Cited<double> armour_ac_factor;       ///< a.c. over d.c. resistance of the armour
    Cited<OhmsPerMetre> armour_x;         ///< reactance of the armour loop
    std::vector<TablePoint> soil_direct;  ///< Cs over K m/W
    std::vector<TablePoint> soil_duct;
    std::vector<TablePoint> depth_direct;  ///< Cd over metres
    std::vector<TablePoint> depth_duct;
    std::vector<TablePoint> grouped_clipped;  ///< Cg over circuits, this one included
    std::vector<TablePoint> grouped_tray;
    std::vector<TablePoint> grouped_enclosed;
    std::vector<TablePoint> grouped_direct;
    std::vector<TablePoint> grouped_duct;
    std::vector<TablePoint> insulation;  ///< Ci over millimetres of cable in thermal insulation
    std::vector<HarmonicStep> harmonic;  ///< rising

    const Material& material(Metal metal) const {
        return metal == Metal::copper ? copper : metal == Metal::aluminium ? aluminium : steel;
    }
};

}  // namespace toft::tables
