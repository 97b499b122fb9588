#include "network/lost_neutral.h"

#include "base/pi.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <optional>

namespace toft::network {

namespace {

using Complex = std::complex<double>;

constexpr double close_enough = 1e-11;  // of the largest line voltage
constexpr double shortest_step = 1e-9;  // of the constant power
constexpr int newton_steps = 30;

/// The circuit in complex numbers.
struct Star {
    std::vector<Complex> lines;
    std::vector<Complex> fixed;  ///< admittance of constant impedance on each line
    std::vector<Complex> power;  ///< conjugate of the constant power on each line
    double earth = 0;            ///< conductance of all paths
    double largest = 0;          ///< line voltage
};

/// Conjugate of the complex power.
Complex conjugate_power(const FloatingLoad& load) {
    const double turn = std::acos(load.power_factor);
    const double reactive = load.power.watts * std::tan(turn);
    return {load.power.watts, load.leading ? reactive : -reactive};
}

Star star_of(const LostNeutral& circuit) {
    Star star;
    for (const LineSource& line : circuit.lines) {
        star.lines.push_back(std::polar(line.u.number(), line.degrees * pi / 180));
        star.largest = std::max(star.largest, line.u.number());
    }
    star.fixed.resize(star.lines.size());
    star.power.resize(star.lines.size());
    const double square = squared(circuit.nominal).number();
    for (const FloatingLoad& load : circuit.loads) {
        if (load.kind == LoadKind::constant_impedance) {
            star.fixed[load.line] += conjugate_power(load) / square;
        } else {
            star.power[load.line] += conjugate_power(load);
        }
    }
    for (const EarthPath& path : circuit.paths) star.earth += 1 / path.resistance.number();
    return star;
}

/// Current that arrives at the terminal at `v` and does not leave it, and how it changes:
/// d(current) = along dv + across conj(dv).
struct Balance {
    Complex current;
    Complex along;
    Complex across;
};

Balance balance(const Star& star, Complex v, double share) {
    Balance b{-v * star.earth, -star.earth, 0};
    for (std::size_t i = 0; i < star.lines.size(); ++i) {
        const Complex across = star.lines[i] - v;
        b.current += star.fixed[i] * across;
        b.along -= star.fixed[i];
        if (star.power[i] == Complex(0)) continue;
        const Complex drawn = share * star.power[i] / std::conj(across);
        b.current += drawn;
        b.across += drawn / std::conj(across);
    }
    return b;
}

/// The terminal with `share` of the constant power, from a guess near by. None where Newton finds
/// no rest, or only one beyond the largest power, where loads and earth cannot stay.
std::optional<Complex> settle(const Star& star, Complex v, double share) {
    for (int step = 0; step < newton_steps; ++step) {
        const Balance b = balance(star, v, share);
        const double slope = std::norm(b.along) - std::norm(b.across);
        if (!(slope > 0)) return std::nullopt;
        const Complex move =
            (-std::conj(b.along) * b.current + b.across * std::conj(b.current)) / slope;
        if (!(std::abs(move) < star.largest / 4)) return std::nullopt;
        v += move;
        if (std::abs(move) <= close_enough * star.largest) return v;
    }
    return std::nullopt;
}

/// Raises the constant power from nothing, in shorter steps where it does not settle.
std::optional<Complex> terminal_of(const Star& star) {
    Complex driven = 0;
    Complex admitted = star.earth;
    bool powered = false;
    for (std::size_t i = 0; i < star.lines.size(); ++i) {
        driven += star.fixed[i] * star.lines[i];
        admitted += star.fixed[i];
        powered = powered || star.power[i] != Complex(0);
    }
    if (admitted == Complex(0)) return std::nullopt;
    Complex v = driven / admitted;
    if (!powered) return v;
    double share = 0;
    double step = 0.25;
    while (share < 1) {
        const double next = std::min(1.0, share + step);
        if (const auto found = settle(star, v, next)) {
            v = *found;
            share = next;
            step *= 2;
        } else if ((step /= 2) < shortest_step) {
            return std::nullopt;
        }
    }
    return v;
}

/// max|E| over the cosine of half the spread of the loads' angles: |sum(Y E)| is at most
/// max|E| sum|Y|, and |sum(Y) + G| at least cos(spread/2) sum|Y|.
Volts bound_of(const LostNeutral& circuit, const Star& star) {
    double least_angle = pi;
    double most_angle = -pi;
    for (const FloatingLoad& load : circuit.loads) {
        if (load.power.watts <= 0) continue;
        const double angle = std::acos(load.power_factor) * (load.leading ? -1 : 1);
        least_angle = std::min(least_angle, angle);
        most_angle = std::max(most_angle, angle);
    }
    if (most_angle < least_angle) return volts(0);
    return volts(star.largest / std::cos((most_angle - least_angle) / 2));
}

class Checker {
public:
    explicit Checker(Faults& faults) : faults_(faults) {}

    void want(bool holds, const std::string& pointer, const std::string& says) {
        if (!holds) faults_.push_back({"out-of-range", pointer, says, "", {}});
    }

private:
    Faults& faults_;
};

bool positive(double x) { return std::isfinite(x) && x > 0; }

Faults faults_of(const LostNeutral& circuit) {
    Faults faults;
    Checker check(faults);
    check.want(positive(circuit.nominal.number()), "/nominal", "a voltage above 0 is wanted");
    check.want(!circuit.lines.empty(), "/lines", "at least one line is wanted");
    for (std::size_t i = 0; i < circuit.lines.size(); ++i) {
        const LineSource& line = circuit.lines[i];
        check.want(positive(line.u.number()) && std::isfinite(line.degrees),
                   fmt::format("/lines/{}", i), "a voltage above 0 and an angle are wanted");
    }
    for (std::size_t i = 0; i < circuit.loads.size(); ++i) {
        const FloatingLoad& load = circuit.loads[i];
        const std::string at = fmt::format("/loads/{}", i);
        check.want(load.line < circuit.lines.size(), at, "the load's line is not there");
        check.want(std::isfinite(load.power.watts) && load.power.watts >= 0, at,
                   "a power of 0 W or more is wanted");
        check.want(load.power_factor > 0 && load.power_factor <= 1, at,
                   "a power factor above 0 and at most 1 is wanted");
    }
    for (std::size_t i = 0; i < circuit.paths.size(); ++i) {
        check.want(positive(circuit.paths[i].resistance.number()), fmt::format("/paths/{}", i),
                   "a resistance above 0 ohm is wanted; leave a path out that is not there");
    }
    return faults;
}

bool loaded(const LostNeutral& circuit) {
    return std::any_of(circuit.loads.begin(), circuit.loads.end(),
                       [](const FloatingLoad& load) { return load.power.watts > 0; });
}

}  // namespace

std::vector<LineSource> single_phase(Volts u) { return {{u, 0}}; }

std::vector<LineSource> three_phase(Volts u) { return {{u, 0}, {u, -120}, {u, -240}}; }

Outcome<FloatingTerminal> lost_neutral(const LostNeutral& circuit) {
    Faults faults = faults_of(circuit);
    if (faults.empty() && circuit.paths.empty() && !loaded(circuit)) {
        faults.push_back({"out-of-range",
                          "/paths",
                          "without load or path to earth nothing settles the terminal",
                          "",
                          {}});
    }
    if (!faults.empty()) return failed(std::move(faults));
    const Star star = star_of(circuit);
    FloatingTerminal result;
    result.bound = bound_of(circuit, star);
    const auto v = terminal_of(star);
    if (!v) {
        result.state = FloatingState::collapsed;
        return result;
    }
    result.terminal = *v;
    result.magnitude = volts(std::abs(*v));
    for (const Complex& line : star.lines) result.left.push_back(volts(std::abs(line - *v)));
    result.earth = amperes(std::abs(*v) * star.earth);
    for (const EarthPath& path : circuit.paths) {
        result.paths.push_back(result.magnitude / path.resistance);
    }
    return result;
}

}  // namespace toft::network
