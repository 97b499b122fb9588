#include "published/motor_methods.h"

#include "circuit/setting.h"
#include "network/drop.h"
#include "network/motor_start.h"
#include "support/catalogue.h"
#include "support/jobs.h"

#include <cmath>

namespace toft::published {

namespace {

using support::PublishedCase;

double sine_of(double power_factor) { return std::sqrt(1 - power_factor * power_factor); }

/// R and X of a length of which each ampere-foot loses so many ten-thousandths at two power
/// factors: two equations.
Impedance of_drops(const PublishedCase& c) {
    const double feet = c.number("length") / 0.3048;
    const double unit = 1e-4 * c.number("U") * feet;
    const double a = c.number("K.run") * unit;
    const double b = c.number("K.start") * unit;
    const double cos_a = c.number("pf.run");
    const double cos_b = c.number("pf.start");
    const double sin_a = sine_of(cos_a);
    const double sin_b = sine_of(cos_b);
    const double d = cos_a * sin_b - sin_a * cos_b;
    return {ohms((a * sin_b - sin_a * b) / d), ohms((cos_a * b - a * cos_b) / d)};
}

Impedance per_unit(const PublishedCase& c) {
    const double base = c.number("U") * c.number("U") / c.number("S");
    return {ohms(c.number("R") * base), ohms(c.number("X") * base)};
}

}  // namespace

Results motor_current(const PublishedCase& c) {
    const bool three = c.numbers.count("U") > 0;
    site::Circuit motor;
    motor.name = "motor";
    motor.kind = site::CircuitKind::motor;
    motor.phases = three ? 3 : 1;
    motor.load_w = support::measured(c.number(three ? "S" : "P"));
    motor.power_factor = support::measured(1.0);
    motor.length = support::measured(metres(10));
    if (c.numbers.count("n")) motor.starting_multiple = support::measured(c.number("n"));
    site::Job job = support::plain_job();
    job.intake.u0 = volts(three ? c.number("U") / std::sqrt(3.0) : c.number("U0"));
    job.buildings[1].circuits = {motor};
    Silent silent;
    const auto circuits =
        circuit::prepare(silent, support::catalogue(), job, job.buildings[1], motor.phases);
    const auto& s = circuits.judged.at(0);
    return {{"I.n", s.ib.number()},
            {"I.start", s.start.number()},
            {"n", s.start.number() / s.ib.number()}};
}

Results motor_voltage(const PublishedCase& c) {
    const Impedance z = c.numbers.count("K.run") ? of_drops(c) : per_unit(c);
    const Volts u = volts(c.number("U"));
    Silent silent;
    const auto lost = [&](const char* current, const char* power_factor) {
        const network::Loading<Silent> load{amperes(c.number(current)), c.number(power_factor), 0};
        return network::line_drop(silent, u, load, z).number() / u.number();
    };
    return {{"run", lost("I.run", "pf.run")},
            {"start", lost("I.start", "pf.start")},
            {"most",
             network::starting_dip(silent, unnamed, u, amperes(c.number("I.start")), magnitude(z)) /
                 100}};
}

}  // namespace toft::published
