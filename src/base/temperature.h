#pragma once
// A temperature on the Celsius scale. Temperatures do not add; their differences are Kelvins.

#include "base/units.h"

namespace toft {

class Celsius {
public:
    constexpr Celsius() = default;
    explicit constexpr Celsius(double degrees) : degrees_(degrees) {}

    /// Degrees Celsius.
    constexpr double number() const { return degrees_; }

    friend constexpr Kelvins operator-(Celsius a, Celsius b) {
        return kelvins(a.degrees_ - b.degrees_);
    }
    friend constexpr Celsius operator+(Celsius a, Kelvins d) {
        return Celsius(a.degrees_ + d.number());
    }
    friend constexpr bool operator<(Celsius a, Celsius b) { return a.degrees_ < b.degrees_; }
    friend constexpr bool operator==(Celsius a, Celsius b) { return a.degrees_ == b.degrees_; }

private:
    double degrees_ = 0;
};

constexpr Celsius celsius(double degrees) { return Celsius(degrees); }
constexpr double number_of(Celsius t) { return t.number(); }
constexpr Celsius least(Celsius a, Celsius b) { return b < a ? b : a; }
constexpr Celsius most(Celsius a, Celsius b) { return a < b ? b : a; }

/// The temperature to which tabulated conductor resistances are referred.
inline constexpr Celsius reference_temperature{20};

}  // namespace toft
