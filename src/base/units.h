#pragma once
// The quantities of the trade by name, with a factory each that says its unit.

#include "base/quantity.h"

namespace toft {

using Volts = Quantity<Dimension{.volt = 2}>;
using Amperes = Quantity<Dimension{.ampere = 2}>;
using Seconds = Quantity<Dimension{.second = 2}>;
using Metres = Quantity<Dimension{.metre = 2}>;
using SquareMillimetres = Quantity<Dimension{.section = 2}>;
/// A temperature difference. A temperature itself is Celsius (base/temperature.h).
using Kelvins = Quantity<Dimension{.kelvin = 2}>;
using PerKelvin = Quantity<Dimension{.kelvin = -2}>;
using Pounds = Quantity<Dimension{.pound = 2}>;
using PoundsPerMetre = Quantity<Dimension{.metre = -2, .pound = 2}>;

using Ohms = Quantity<Dimension{.volt = 2, .ampere = -2}>;
using OhmsPerMetre = Quantity<Dimension{.volt = 2, .ampere = -2, .metre = -2}>;
/// Soil resistivity.
using OhmMetres = Quantity<Dimension{.volt = 2, .ampere = -2, .metre = 2}>;
using VoltAmperes = Quantity<Dimension{.volt = 2, .ampere = 2}>;
/// Energy a fault puts into a conductor, per ohm: the I2t of the trade.
using AmpereSquareSeconds = Quantity<Dimension{.ampere = 4, .second = 2}>;
/// The fault-heat constant k of a conductor: A s^0.5 / mm2.
using HeatConstant = Quantity<Dimension{.ampere = 2, .second = 1, .section = -2}>;
/// Thermal resistivity of soil (K m/W); kept apart from all else because a watt is its own kind
/// here.
struct SoilThermalResistivity {
    double kelvin_metres_per_watt = 0;
};

/// Active power. Not interchangeable with volt-amperes: a power factor stands between.
struct Watts {
    double watts = 0;
};

/// Apparent power of a load of power `p` at power factor `pf` (0 < pf <= 1).
constexpr VoltAmperes apparent(Watts p, double pf) { return VoltAmperes(p.watts / pf); }

constexpr Volts volts(double v) { return Volts(v); }
constexpr Amperes amperes(double v) { return Amperes(v); }
constexpr Amperes kiloamperes(double v) { return Amperes(v * 1000); }
constexpr Amperes milliamperes(double v) { return Amperes(v / 1000); }
constexpr Seconds seconds(double v) { return Seconds(v); }
constexpr Metres metres(double v) { return Metres(v); }
constexpr Metres millimetres(double v) { return Metres(v / 1000); }
constexpr SquareMillimetres square_millimetres(double v) { return SquareMillimetres(v); }
constexpr Kelvins kelvins(double v) { return Kelvins(v); }
constexpr PerKelvin per_kelvin(double v) { return PerKelvin(v); }
constexpr Ohms ohms(double v) { return Ohms(v); }
constexpr OhmsPerMetre ohms_per_metre(double v) { return OhmsPerMetre(v); }
constexpr OhmsPerMetre milliohms_per_metre(double v) { return OhmsPerMetre(v / 1000); }
constexpr OhmMetres ohm_metres(double v) { return OhmMetres(v); }
constexpr AmpereSquareSeconds ampere_square_seconds(double v) { return AmpereSquareSeconds(v); }
constexpr HeatConstant heat_constant(double v) { return HeatConstant(v); }
constexpr Pounds pounds(double v) { return Pounds(v); }
constexpr PoundsPerMetre pounds_per_metre(double v) { return PoundsPerMetre(v); }

/// To the whole penny; half a penny goes up, and so does what misses half a penny by less than a
/// millionth of one, as a sum in binary may.
inline Pounds penny(Pounds amount) {
    return Pounds(std::floor(amount.number() * 100 + (0.5 + 1e-6)) / 100);
}

}  // namespace toft
