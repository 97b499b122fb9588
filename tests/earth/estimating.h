#pragma once
// Closed forms worked out at both depths, and the same electrodes as fields of wires.

#include "base/ledger.h"
#include "earth/electrode_shape.h"
#include "earth/estimate.h"
#include "earth/field.h"
#include "support/working.h"

#include <gtest/gtest.h>

#include <stdexcept>

namespace toft::earth {

/// A figure that the test states.
template <class L, class T>
ValueIn<L, T> given(L& ledger, const char* symbol, T value) {
    return ledger.stated({symbol, ""}, value, "survey");
}

/// What `form` (of any ledger) answers, once its written working has been found to hold.
template <class Form>
double worked(const Form& form) {
    Silent silent;
    Recording recording;
    const double figure = form(silent).number();
    EXPECT_EQ(form(recording).value.number(), figure);
    for (const std::string& wrong : support::wrong_lines(recording.lines())) {
        ADD_FAILURE() << wrong;
    }
    return figure;
}

inline Spot spot(double east, double north, double depth) {
    return {metres(east), metres(north), metres(depth)};
}

inline LayeredSoil layers(double upper, double lower, double thickness) {
    return {ohm_metres(upper), ohm_metres(lower), metres(thickness)};
}

inline Wire rod(double east, double north, double length, double diameter, int electrode = 0) {
    return rod_wire(spot(east, north, 0), metres(length), metres(diameter / 2), electrode);
}

inline Field field_of(const LayeredSoil& soil, const std::vector<Wire>& wires,
                      double longest = 0.25, int fewest = 12) {
    auto field = solve_field(soil, wires, {metres(longest), fewest});
    if (!field) throw std::runtime_error(field.error().front().says);
    return *field;
}

inline double joined(const LayeredSoil& soil, const std::vector<Wire>& wires, double longest = 0.25,
                     int fewest = 12) {
    return field_of(soil, wires, longest, fewest).joined().number();
}

/// Uniform soil of 100 ohm metres.
inline LayeredSoil plain_soil() { return uniform_soil(ohm_metres(100)); }

}  // namespace toft::earth
