// A supply that lost its neutral, worked out by the program and as a circuit by ngspice.

#include "network/lost_neutral.h"
#include "network/ways_to_earth.h"
#include "support/phasor_nets.h"
#include "support/spice.h"

#include <gtest/gtest.h>

#include <fmt/format.h>

#include <cmath>

namespace toft::network {
namespace {

constexpr double agreement = 1e-6;

FloatingLoad load(std::size_t line, double watts, double pf = 1, bool leading = false) {
    return {LoadKind::constant_impedance, {watts}, pf, leading, line};
}

FloatingLoad steady(std::size_t line, double watts, double pf = 1) {
    return {LoadKind::constant_power, {watts}, pf, false, line};
}

struct Case {
    const char* title;
    LostNeutral circuit;
};

const std::vector<EarthPath> rod_and_pipe{{"rod", ohms(71)}, {"pipe", ohms(14)}};

/// Loads that a circuit of resistances and inductances can show.
const std::vector<Case> impedances{
    {"one line, heaters, one rod",
     {volts(230), single_phase(volts(230)), {load(0, 3000)}, {{"rod", ohms(71.6)}}}},
    {"one line at the upper voltage, motor and heater, two paths",
     {volts(230), single_phase(volts(253)), {load(0, 2000), load(0, 1500, 0.7)}, rod_and_pipe}},
    {"three lines, 10, 5 and 2 kW, 5 ohm",
     {volts(230),
      three_phase(volts(230)),
      {load(0, 10000), load(1, 5000), load(2, 2000)},
      {{"all", ohms(5)}}}},
    {"three lines, no earth at all",
     {volts(230), three_phase(volts(230)), {load(0, 10000), load(1, 5000), load(2, 2000)}, {}}},
    {"three lines, one loaded, 20 ohm",
     {volts(230), three_phase(volts(230)), {load(0, 7000)}, {{"all", ohms(20)}}}},
    {"three lines of unlike power factors",
     {volts(230),
      three_phase(volts(240)),
      {load(0, 4000), load(1, 4000, 0.6), load(2, 900, 0.9)},
      rod_and_pipe}},
    {"three lines, balanced",
     {volts(230),
      three_phase(volts(230)),
      {load(0, 6000), load(1, 6000), load(2, 5999)},
      rod_and_pipe}}};

void lay_out(support::Circuit& spice, const LostNeutral& circuit, std::size_t n) {
    for (std::size_t i = 0; i < circuit.lines.size(); ++i) {
        spice.source(fmt::format("s{}x{}", n, i), fmt::format("l{}x{}", n, i), circuit.lines[i].u,
                     circuit.lines[i].degrees);
    }
    const std::string terminal = fmt::format("e{}", n);
    for (const FloatingLoad& one : circuit.loads) {
        // S = U²/conj(Z): |Z| = U² pf/P, at the angle of the power factor.
        const double z = squared(circuit.nominal).number() * one.power_factor / one.power.watts;
        const double sine = std::sqrt(1 - one.power_factor * one.power_factor);
        spice.impedance(fmt::format("l{}x{}", n, one.line), terminal,
                        {ohms(z * one.power_factor), ohms(z * sine)});
    }
    for (const EarthPath& path : circuit.paths) {
        spice.impedance(terminal, "0", {path.resistance, ohms(0)});
    }
    if (circuit.paths.empty()) spice.impedance(terminal, "0", {ohms(1e12), ohms(0)});
    spice.ask_voltage(fmt::format("rise{}", n), terminal);
    for (std::size_t i = 0; i < circuit.lines.size(); ++i) {
        spice.ask_voltage_between(fmt::format("left{}x{}", n, i), fmt::format("l{}x{}", n, i),
                                  terminal);
    }
}

TEST(LostNeutralCircuits, ConstantImpedancesAgreeWithNgspice) {
    support::Circuit spice;
    for (std::size_t n = 0; n < impedances.size(); ++n) lay_out(spice, impedances[n].circuit, n);
    const auto answers = spice.solve();
    for (std::size_t n = 0; n < impedances.size(); ++n) {
        const LostNeutral& circuit = impedances[n].circuit;
        const auto ours = lost_neutral(circuit);
        ASSERT_TRUE(ours) << impedances[n].title;
        ASSERT_EQ(ours->state, FloatingState::steady) << impedances[n].title;
        EXPECT_NEAR(ours->magnitude.number() / answers.at(fmt::format("rise{}", n)), 1, agreement)
            << impedances[n].title;
        for (std::size_t i = 0; i < circuit.lines.size(); ++i) {
            EXPECT_NEAR(ours->left[i].number() / answers.at(fmt::format("left{}x{}", n, i)), 1,
                        agreement)
                << impedances[n].title << ", line " << i;
        }
    }
}

/// Resistances and loads of constant power; ngspice finds its own way to the operating point.
const std::vector<Case> powers{
    {"one line, 3 kW of constant power, 4 ohm",
     {volts(230), single_phase(volts(230)), {steady(0, 3000)}, {{"all", ohms(4)}}}},
    {"one line, constant power and heater",
     {volts(230), single_phase(volts(230)), {steady(0, 500), load(0, 1000)}, {{"all", ohms(10)}}}},
    {"one line, constant power that lags",
     {volts(230), single_phase(volts(253)), {steady(0, 1000, 0.8)}, {{"all", ohms(8)}}}},
    {"three lines, constant power on each, 2 ohm",
     {volts(230),
      three_phase(volts(230)),
      {steady(0, 4000, 0.9), steady(1, 2000), steady(2, 500, 0.7)},
      {{"all", ohms(2)}}}},
    {"three lines, heaters and constant power",
     {volts(230),
      three_phase(volts(230)),
      {load(0, 5000), load(1, 2500), steady(2, 800, 0.95)},
      {{"all", ohms(6)}}}}};

TEST(LostNeutralCircuits, ConstantPowersAgreeWithNgspice) {
    for (const Case& one : powers) {
        support::PhasorNets nets;
        for (std::size_t i = 0; i < one.circuit.lines.size(); ++i) {
            nets.source(fmt::format("l{}", i), one.circuit.lines[i].u,
                        one.circuit.lines[i].degrees);
        }
        for (const FloatingLoad& given : one.circuit.loads) {
            const std::string line = fmt::format("l{}", given.line);
            if (given.kind == LoadKind::constant_impedance) {
                ASSERT_EQ(given.power_factor, 1);
                nets.resistance(line, "e",
                                ohms(squared(one.circuit.nominal).number() / given.power.watts));
            } else {
                nets.power(line, "e", given.power.watts,
                           given.power.watts * std::tan(std::acos(given.power_factor)));
            }
        }
        for (const EarthPath& path : one.circuit.paths) {
            nets.resistance("e", "0", path.resistance);
        }
        nets.ask_voltage("rise", "e");
        const auto ours = lost_neutral(one.circuit);
        ASSERT_TRUE(ours) << one.title;
        ASSERT_EQ(ours->state, FloatingState::steady) << one.title;
        EXPECT_NEAR(ours->magnitude.number() / nets.solve().at("rise"), 1, agreement) << one.title;
    }
}

TEST(LostNeutralCircuits, TwoEarthsThatFeelEachOtherAgreeWithNgspice) {
    // A 2 by 2 resistance matrix is a star: what both have in common, and what each has alone.
    Silent ledger;
    const TwoEarths<Silent> earths{ohms(12), ohms(80), 0.15, ohms(17.6), volts(253)};
    const Ohms mutual = 0.15 * earths.house;
    support::Circuit spice;
    spice.source("s", "l", earths.source);
    spice.impedance("l", "e", {earths.load, ohms(0)});
    spice.impedance("e", "c", {earths.house - mutual, ohms(0)});
    spice.impedance("e", "c", {earths.outbuilding - mutual, ohms(0)});
    spice.impedance("c", "0", {mutual, ohms(0)});
    spice.ask_voltage("metal", "e");
    spice.ask_voltage_between("over", "e", "c");
    const auto answers = spice.solve();
    const auto ours = outbuilding_earth(ledger, WayToEarth::carried_and_added, earths);
    EXPECT_NEAR(ours.metal.number() / answers.at("metal"), 1, agreement);
    EXPECT_NEAR((ours.electrode * (earths.outbuilding - mutual)).number() / answers.at("over"), 1,
                agreement);
}

}  // namespace
}  // namespace toft::network
