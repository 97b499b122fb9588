#pragma once
// What a body does to a current and a current to a body, the times a touch voltage may last, and
// the heat that electrodes bear. Most rows are recalled: see the basis of each citation.

#include "base/interpolate.h"
#include "base/units.h"

#include <array>
#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace toft::tables {

enum class Skin { dry, water_wet, salt_wet };
/// How many people of a hundred have less impedance.
enum class Percentile { five, fifty, ninety_five };
enum class BodyPath { hand_to_hand, hand_to_both_feet, both_hands_to_both_feet };
enum class TouchCurve { dry, wet };
/// Lines between the zones of time and current.
enum class ZoneLine { a, b, c1, c2, c3 };
/// What a threshold of touch voltage belongs to.
enum class Threshold {
    wet,            ///< touch that lasts: children, livestock, wet places
    dry,            ///< touch that lasts: adults in dry places
    charging_point  ///< neutral of the supply lost, charging points for vehicles only
};

inline constexpr std::size_t skins = 3;
inline constexpr std::size_t percentiles = 3;
inline constexpr std::size_t body_paths = 3;
inline constexpr std::size_t touch_curves = 2;
inline constexpr std::size_t zone_lines = 5;
inline constexpr std::size_t thresholds = 3;

/// Watts per metre and kelvin.
using SoilConductivity = Quantity<Dimension{.volt = 2, .ampere = 2, .metre = -2, .kelvin = -2}>;
using AmperesPerSquareMetre = Quantity<Dimension{.ampere = 2, .metre = -4}>;
/// Current density times the root of soil resistivity and time.
using HeatDensity = Quantity<Dimension{.volt = 1, .ampere = 1, .second = 1, .metre = -3}>;
using PerMetre = Quantity<Dimension{.metre = -2}>;

struct HeartFactor {
    std::string path;      ///< "left hand to feet", …
    Cited<double> factor;  ///< of a current from left hand to feet that does as much
};

struct Footwear {
    std::string what;  ///< "none", "old wet shoes", "shoes"
    Cited<Ohms> both;  ///< both feet together
};

/// A person as stated in plain words. The figures are the row's; a caller may put others.
struct Condition {
    std::string words;
    Skin skin = Skin::dry;
    BodyPath path = BodyPath::hand_to_hand;
    Percentile percentile = Percentile::five;
    Cited<Ohms> footwear;
    Cited<OhmMetres> ground;
    const Citation* citation = nullptr;
};

struct TouchThreshold {
    Cited<Volts> limit;
    std::string belongs_to;
};

/// Heat of electrodes in the ground.
struct ElectrodeHeat {
    Cited<HeatDensity> short_time;
    Cited<Seconds> short_longest;  ///< for which the law of short times is used
    Cited<AmperesPerSquareMetre> long_time;
    Cited<Kelvins> rise;  ///< at which the ground is taken to dry
    Cited<SoilConductivity> conductivity_low;
    Cited<SoilConductivity> conductivity_high;
};

struct Shock {
    /// Ohms over volts, hand to hand, by skin and percentile.
    std::array<std::array<std::vector<TablePoint>, percentiles>, skins> body;
    std::array<Cited<double>, body_paths> path_share;  ///< of hand to hand
    std::vector<HeartFactor> heart;
    std::vector<Footwear> footwear;
    Cited<PerMetre> feet_contact;  ///< of both feet, times the resistivity of the surface
    std::vector<Condition> conditions;
    std::array<std::vector<TablePoint>, touch_curves> touch_time;  ///< seconds over volts
    std::array<std::vector<TablePoint>, zone_lines> zones;         ///< amperes over seconds
    std::array<TouchThreshold, thresholds> limits;                 ///< by Threshold
    ElectrodeHeat heat;

    const std::vector<TablePoint>& impedance(Skin skin, Percentile percentile) const {
        return body[static_cast<std::size_t>(skin)][static_cast<std::size_t>(percentile)];
    }
    const TouchThreshold& limit(Threshold threshold) const {
        return limits[static_cast<std::size_t>(threshold)];
    }
};

/// The condition of those words, or null.
const Condition* find_condition(const Shock& shock, std::string_view words);

/// The factor of that path, or null.
const HeartFactor* find_heart_factor(const Shock& shock, std::string_view path);

}  // namespace toft::tables
