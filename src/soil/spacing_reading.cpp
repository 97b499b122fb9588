#include "soil/spacing_reading.h"

#include "base/pi.h"

#include <fmt/format.h>

#include <cmath>

namespace toft::soil {

namespace {

constexpr Metres closest = metres(0.05);
constexpr Metres widest = metres(2000);

constexpr Metres apart = metres(0.01);   ///< inner pin and outer pin, at least
constexpr double narrowest = 1.0 / 500;  ///< inner pins, of half the distance of the outer ones

/// What is wrong with the inner pins of a Schlumberger spread, or null.
const char* complaint_of_inner_pins(const Spread& spread) {
    if (!(spread.potential >= narrowest * spread.spacing)) {
        return "the inner pins must stand a five-hundredth of the spacing apart or more";
    }
    if (!(pin_distances(spread).near >= apart)) {
        return "the inner pins must stand between the outer ones: give the distance of the inner "
               "pins, and half the distance of the outer ones as spacing";
    }
    return nullptr;
}

class SpreadFaults {
public:
    SpreadFaults(std::size_t place, Faults& faults) : place_(place), faults_(&faults) {}

    void note(const char* key, const char* says) {
        faults_->push_back({"out-of-range", fmt::format("/{}/{}", place_, key), says, "", {}});
    }

    void look_at(const Spread& spread) {
        if (!(spread.spacing >= closest) || !(spread.spacing <= widest)) {
            note("spacing_m", "the spacing of the pins must be 0.05 to 2000 m");
            return;
        }
        if (spread.array == PinArray::schlumberger) {
            if (const char* says = complaint_of_inner_pins(spread)) {
                note("potential_m", says);
                return;
            }
        }
        if (!(spread.depth >= metres(0))) {
            note("depth_m", "the pins cannot stand above the ground; leave their depth out");
        } else if (!(spread.depth <= pin_distances(spread).near)) {
            note("depth_m", "pins deeper than they stand apart are no points: spread them wider");
        }
    }

private:
    std::size_t place_;
    Faults* faults_;
};

}  // namespace

PinDistances pin_distances(const Spread& spread) {
    if (spread.array == PinArray::wenner) return {spread.spacing, 2 * spread.spacing};
    return {spread.spacing - spread.potential / 2, spread.spacing + spread.potential / 2};
}

Metres geometric_factor(const Spread& spread) {
    const auto [near, far] = pin_distances(spread);
    const auto image = [&](Metres distance) {
        return root(squared(distance) + 4 * squared(spread.depth));
    };
    const auto sum = 2 * (1 / near - 1 / far + 1 / image(near) - 1 / image(far));
    return 4 * pi / sum;
}

OhmMetres apparent_resistivity(const SpacingReading& reading) {
    return geometric_factor(reading.spread) * reading.resistance;
}

Faults faults_of(const std::vector<Spread>& spreads) {
    Faults faults;
    for (std::size_t i = 0; i < spreads.size(); ++i) SpreadFaults(i, faults).look_at(spreads[i]);
    return faults;
}

Faults faults_of(const std::vector<SpacingReading>& readings) {
    Faults faults;
    for (std::size_t i = 0; i < readings.size(); ++i) {
        SpreadFaults found(i, faults);
        found.look_at(readings[i].spread);
        const double r = readings[i].resistance.number();
        if (!(r > 0) || !std::isfinite(r)) {
            found.note("resistance_ohm",
                       "a reading must be above 0: a negative one has two leads crossed, a zero "
                       "one lacks current or a pin");
        }
    }
    return faults;
}

}  // namespace toft::soil
