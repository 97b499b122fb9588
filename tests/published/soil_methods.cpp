#include "published/soil_methods.h"

#include "base/root.h"
#include "soil/fall_of_potential.h"
#include "soil/soil_fit.h"

#include <stdexcept>

namespace toft::published {

namespace {

using support::PublishedCase;

soil::Spread pins(double spacing) { return {soil::PinArray::wenner, metres(spacing), {}, {}}; }

std::vector<soil::SpacingReading> readings_of(const PublishedCase& c) {
    std::vector<soil::SpacingReading> readings;
    for (int i = 1; c.numbers.count("a." + std::to_string(i)); ++i) {
        const std::string number = std::to_string(i);
        const soil::Spread spread = pins(c.number("a." + number));
        const Ohms given = c.numbers.count("R." + number) ? ohms(c.number("R." + number))
                                                          : ohm_metres(c.number("rho." + number)) /
                                                                soil::geometric_factor(spread);
        readings.push_back({spread, given});
    }
    return readings;
}

}  // namespace

Results four_pin_reading(const PublishedCase& c) {
    return {
        {"rho", soil::apparent_resistivity({pins(c.number("a")), ohms(c.number("R"))}).number()}};
}

Results soil_fit(const PublishedCase& c) {
    const auto fit = soil::fit_soil(readings_of(c));
    if (!fit) throw std::runtime_error(fit.error().front().says);
    Results results;
    if (fit->verdict == soil::Verdict::not_identifiable) return results;
    results["layers"] = static_cast<double>(fit->best.layers.size() + 1);
    results["rho.deepest"] = fit->best.deepest.number();
    for (std::size_t i = 0; i < fit->best.layers.size(); ++i) {
        const std::string number = std::to_string(i + 1);
        results["rho." + number] = fit->best.layers[i].resistivity.number();
        results["h." + number] = fit->best.layers[i].thickness.number();
    }
    return results;
}

Results fall_of_potential(const PublishedCase& c) {
    soil::FallTest test;
    test.current_spike = metres(c.number("D"));
    test.length = metres(c.number("L", 0));
    test.diameter = metres(c.number("d", 0));
    const double place = last_holding(0.1 * c.number("D"), 0.95 * c.number("D"), [&](double x) {
        return soil::overlap_error(test, metres(x)) <= 0;
    });
    return {{"place", place}, {"shown", 1 + soil::overlap_error(test, metres(c.number("x")))}};
}

}  // namespace toft::published
