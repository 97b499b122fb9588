#pragma once
// What the tables know of fuses, circuit breakers and residual current devices.

#include "base/citation.h"
#include "base/units.h"

#include <optional>
#include <string>
#include <vector>

namespace toft::tables {

/// How a device works; decides what its curve promises beyond its last point.
enum class Kind {
    fuse,       ///< cartridge with a filled element: limits the current it breaks
    rewirable,  ///< semi-enclosed: a bare wire, limits nothing
    breaker,    ///< circuit breaker of the household sort
    rcbo,       ///< the same with residual current protection
    moulded,    ///< moulded-case breaker, thermal and magnetic
};

/// The word of data/device/kind.csv.
const char* kind_word(Kind kind);

/// One corner of a device's band. Among `points`: the device is sure to have operated within `time`
/// at `current` and above. Among `holds`: it is sure not to have operated before `time` at
/// `current` and below.
struct CurvePoint {
    Seconds time;
    Cited<Amperes> current;
};

/// Break times of a kind of residual current device.
struct RcdTimes {
    Cited<Seconds> longest_1;  ///< at the rated residual current
    Cited<Seconds> longest_2;  ///< at twice that
    Cited<Seconds> longest_5;  ///< at five times that
    Seconds shortest_1;        ///< it stays closed at least so long; 0 where nothing is promised
    Seconds shortest_2;
    Seconds shortest_5;
};

/// Largest I2t that a breaker of an energy class lets through at fault currents up to a level.
struct LetThrough {
    Amperes up_to;
    Cited<AmpereSquareSeconds> limit;
};

/// What makes an RCBO a residual current device of its own.
struct Residual {
    Cited<Amperes> sensitivity;
    RcdTimes times;
};

/// One rating of one overcurrent device.
struct Device {
    std::string standard;  ///< "BS 88-3", "BS EN 60898"
    std::string curve;     ///< "B", "C", "D", "TM" (moulded); empty for a fuse
    Kind kind = Kind::rewirable;
    Amperes rating;
    Cited<Amperes> breaking;         ///< rated breaking capacity
    std::vector<CurvePoint> points;  ///< by falling time, rising current
    std::vector<CurvePoint> holds;   ///< by falling time, rising current
    std::vector<CurvePoint> trips;   ///< as `points`, of overloads that last minutes or hours
    std::optional<Cited<AmpereSquareSeconds>> let_through;  ///< limit at faults up to `breaking`
    std::vector<LetThrough> let_through_at;             ///< limits at lower levels, by rising level
    std::optional<Cited<AmpereSquareSeconds>> melting;  ///< of a fuse: less never melts it
    std::optional<Cited<double>> fuse_ratio;  ///< rated currents of gG fuses that are selective
    Cited<double> i2;                         ///< I2 over In, for I2 <= 1.45 Iz (433.1.1 (iii))
    std::optional<Residual> residual;         ///< of an RCBO
    bool offered = true;  ///< it may be bought: the price book in use has a price for it

    /// A fuse of any sort.
    bool fuse() const { return kind == Kind::fuse || kind == Kind::rewirable; }
    /// Lets through no more energy at larger currents than at the end of its curve.
    bool limiting() const { return kind == Kind::fuse; }
};

/// A residual current device that may stand at the head of a run.
struct RunRcd {
    Amperes sensitivity;
    bool delayed = true;
    Cited<Seconds> longest;  ///< at the rated residual current
};

}  // namespace toft::tables
