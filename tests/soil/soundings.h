#pragma once
// Readings in few words, taken in the field or made up from a soil.

#include "base/pi.h"
#include "soil/layered_sounding.h"
#include "soil/soil_fit.h"

#include <gtest/gtest.h>

#include <cmath>
#include <stdexcept>
#include <vector>

namespace toft::soil {

using Numbers = std::vector<double>;

inline Spread wenner(double spacing, double depth = 0) {
    return {PinArray::wenner, metres(spacing), {}, metres(depth)};
}

inline Spread schlumberger(double half, double inner) {
    return {PinArray::schlumberger, metres(half), metres(inner), {}};
}

inline std::vector<Spread> wenners(const Numbers& spacings) {
    std::vector<Spread> spreads;
    for (double spacing : spacings) spreads.push_back(wenner(spacing));
    return spreads;
}

/// Readings at these spreads that come to these apparent resistivities.
inline std::vector<SpacingReading> seen(const std::vector<Spread>& spreads, const Numbers& rho) {
    std::vector<SpacingReading> readings;
    for (std::size_t i = 0; i < spreads.size(); ++i) {
        readings.push_back({spreads[i], ohm_metres(rho.at(i)) / geometric_factor(spreads[i])});
    }
    return readings;
}

inline std::vector<SpacingReading> in_ohms(const Numbers& spacings, const Numbers& resistances) {
    std::vector<SpacingReading> readings;
    for (std::size_t i = 0; i < spacings.size(); ++i) {
        readings.push_back({wenner(spacings[i]), ohms(resistances.at(i))});
    }
    return readings;
}

inline field::Strata one(double rho) { return {{}, ohm_metres(rho)}; }

inline field::Strata two(double upper, double thickness, double lower) {
    return {{{ohm_metres(upper), metres(thickness)}}, ohm_metres(lower)};
}

inline field::Strata three(double upper, double h1, double middle, double h2, double lower) {
    return {{{ohm_metres(upper), metres(h1)}, {ohm_metres(middle), metres(h2)}}, ohm_metres(lower)};
}

inline Numbers over(const field::Strata& soil, const std::vector<Spread>& spreads) {
    const auto apparent = apparent_over(soil, spreads);
    if (!apparent) throw std::runtime_error(apparent.error().front().says);
    Numbers rho;
    for (OhmMetres value : *apparent) rho.push_back(value.number());
    return rho;
}

/// What would be read over a soil, without error.
inline std::vector<SpacingReading> read_over(const field::Strata& soil, const Numbers& spacings) {
    return seen(wenners(spacings), over(soil, wenners(spacings)));
}

inline SoilFit fit_of(const std::vector<SpacingReading>& readings) {
    const auto fit = fit_soil(readings);
    if (!fit) throw std::runtime_error(fit.error().front().says);
    return *fit;
}

inline const Numbers usual_spacings{0.5, 1, 1.5, 2, 3, 4, 6, 8, 12, 16, 24, 32};

/// IEEE Std 80-2000, Annex E, soil type 1, as a design sheet reproduces it:
/// https://www.scribd.com/document/305373221/Substation-Earthing
inline std::vector<SpacingReading> ieee_80_soil_1(std::size_t from = 0) {
    const Numbers a{0.31, 0.92, 1.52, 4.57, 6.10, 9.15, 15.24, 21.34, 27.44, 33.54, 39.63, 45.73};
    const Numbers r{29.73, 15.33, 9.97, 3.85, 3.15, 2.49, 1.90, 1.56, 1.32, 1.15, 1.01, 0.90};
    auto readings = in_ohms(a, r);
    readings.erase(readings.begin(), readings.begin() + static_cast<std::ptrdiff_t>(from));
    return readings;
}

/// A sheet in the style of IS 3043, traverse 1:
/// https://it.scribd.com/document/385628180/Earthing-Calculations2
inline std::vector<SpacingReading> near_uniform_sheet() {
    return in_ohms({0.5, 1, 1.5, 2, 2.5, 3}, {20.7, 9.87, 6.9, 4.86, 4.01, 3.08});
}

/// A utility's substation manual, Table B-3, traverse 1:
/// https://fliphtml5.com/knayh/omdt/TNB-Sub_Station_Design_Manual/419
inline std::vector<SpacingReading> near_uniform_manual() {
    return in_ohms({1, 1.5, 2, 3, 4.5, 6, 9, 13.5},
                   {21.1, 14.43, 10.96, 6.52, 4.55, 3.370, 2.480, 1.609});
}

/// Two-layer sets of papers (del Alamo 1993 and followers), as remembered, not seen.
inline std::vector<SpacingReading> remembered_falling() {
    return seen(wenners({2.5, 5, 7.5, 10, 12.5, 15}), {320, 245, 182, 162, 168, 152});
}
inline std::vector<SpacingReading> remembered_rising() {
    return seen(wenners({1, 2, 4, 10, 20, 30}), {136, 140, 214, 446, 685, 800});
}

}  // namespace toft::soil
