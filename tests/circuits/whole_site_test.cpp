// A run with one of the circuits behind it, drawn with a fixed seed and solved whole by ngspice:
// the voltage at the board and at the last point must agree to a millionth, and the fault currents
// must lie within the bounds that the program states.

#include "study/circuit_figures.h"
#include "support/catalogue.h"
#include "support/jobs.h"
#include "support/spice.h"

#include <gtest/gtest.h>

#include <fmt/format.h>

#include <cmath>
#include <complex>
#include <random>

namespace toft {
namespace {

using Phasor = std::complex<double>;

constexpr int sites = 60;
constexpr double u0 = 230;

struct Dice {
    std::mt19937 random{77};
    double between(double low, double high) {
        return low + (high - low) * static_cast<double>(random() % 100001) / 100000.0;
    }
};

site::Job drawn_job(Dice& dice) {
    site::Job job = support::job_with_legs(
        {support::plain_leg(site::LegMethod::buried_direct, dice.between(5, 60)),
         support::plain_leg(site::LegMethod::clipped, dice.between(2, 20))});
    site::Building& shed = job.buildings[1];
    shed.load = support::measured(amperes(dice.between(18, 40)));
    shed.power_factor = support::measured(dice.between(0.7, 1));
    site::Circuit c;
    c.name = "Heater";
    c.kind = site::CircuitKind::fixed_load;
    c.load_w = support::measured(dice.between(500, 3500));
    c.power_factor = support::measured(dice.between(0.7, 1));
    c.length = support::measured(metres(dice.between(2, 40)));
    shed.circuits = {c};
    return job;
}

Phasor phasor(const Impedance& z) { return {z.r.number(), z.x.number()}; }
Impedance impedance(Phasor z) { return {ohms(z.real()), ohms(z.imag())}; }

/// Impedance that takes `i` at that power factor, lagging, from `u` volts.
Phasor taking(double u, double i, double power_factor) {
    return std::polar(u / i, std::acos(power_factor));
}

struct Whole {
    study::Setting<Silent> setting;
    study::Figures<Silent> figures;
};

Whole worked(const site::Job& job) {
    Silent silent;
    Whole w{support::prepared(job), {}};
    const auto scheme = support::scheme(support::cable(3, 10), study::Protective::core_and_armour,
                                        support::fuse(45));
    study::work_out(silent, w.setting, scheme, study::Stage::circuits, w.figures);
    return w;
}

/// The board with the circuit behind it and, beside it, what else the run feeds.
void lay_out(support::Circuit& net, const Whole& w, int i) {
    const auto node = [&](const char* name) { return fmt::format("{}{}", name, i); };
    const auto& d = w.figures.circuits.at(0);
    const auto& s = w.setting.circuits.judged.at(0);
    const double at_board = u0 - w.figures.drop.number();
    const double at_load = at_board - d.drop_own / 100 * u0;
    const Phasor circuit =
        phasor(d.conductors.load) + taking(at_load, s.ib.number(), s.power_factor);
    const Phasor all = taking(at_board, w.setting.ib.number(), w.setting.power_factor);
    const Phasor others = 1.0 / (1.0 / all - 1.0 / circuit);
    net.source(node("s"), node("o"), volts(u0));
    net.impedance(node("o"), node("b"), w.figures.met);
    net.impedance(node("b"), "0", impedance(others));
    net.impedance(node("b"), node("l"), d.conductors.load);
    net.impedance(node("l"), "0", impedance(taking(at_load, s.ib.number(), s.power_factor)));
    net.ask_voltage(node("board"), node("b"));
    net.ask_voltage(node("last"), node("l"));
}

TEST(WholeSite, BoardAndLastPointHaveTheVoltageThatNgspiceFinds) {
    Dice dice;
    std::vector<site::Job> jobs;
    for (int i = 0; i < sites; ++i) jobs.push_back(drawn_job(dice));
    std::vector<Whole> all;
    support::Circuit net;
    for (int i = 0; i < sites; ++i) {
        all.push_back(worked(jobs[static_cast<std::size_t>(i)]));
        lay_out(net, all.back(), i);
    }
    const auto answers = net.solve();
    for (int i = 0; i < sites; ++i) {
        const Whole& w = all[static_cast<std::size_t>(i)];
        const double board = u0 - w.figures.drop.number();
        const double last =
            u0 * (1 - w.figures.circuits.at(0).at(circuit::Matter::drop).value / 100);
        EXPECT_NEAR(answers.at(fmt::format("board{}", i)) / board, 1, 1e-6) << i;
        EXPECT_NEAR(answers.at(fmt::format("last{}", i)) / last, 1, 1e-6) << i;
    }
}

TEST(WholeSite, AnEarthFaultAtTheLastPointIsNoSmallerThanStated) {
    Dice dice;
    support::Circuit net;
    std::vector<double> stated;
    for (int i = 0; i < sites; ++i) {
        const site::Job job = drawn_job(dice);
        Silent silent;
        const Whole w = worked(job);
        const auto scheme = support::scheme(support::cable(3, 10),
                                            study::Protective::core_and_armour, support::fuse(45));
        const auto path = study::feed_of(silent, w.setting, scheme, w.figures).zs[0];
        const auto& d = w.figures.circuits.at(0);
        // The supply's angle is anyone's guess: a third of it is taken as reactance here.
        const double ze = 0.2;
        const double run = path.number() - ze;
        net.source(fmt::format("s{}", i), fmt::format("a{}", i), volts(u0));
        net.impedance(fmt::format("a{}", i), fmt::format("b{}", i),
                      {ohms(ze * 0.94281), ohms(ze / 3)});
        net.impedance(fmt::format("b{}", i), fmt::format("c{}", i), {ohms(run), ohms(0)});
        net.impedance(fmt::format("c{}", i), "0", d.conductors.line[0] + d.conductors.back[0]);
        net.ask_current(fmt::format("i{}", i), fmt::format("s{}", i));
        stated.push_back(u0 / d.zs.number());
    }
    const auto answers = net.solve();
    for (int i = 0; i < sites; ++i) {
        const double theirs = answers.at(fmt::format("i{}", i));
        EXPECT_GE(theirs, stated[static_cast<std::size_t>(i)] * (1 - 1e-6)) << i;
        EXPECT_LE(theirs, stated[static_cast<std::size_t>(i)] * 1.1) << i;
    }
}

}  // namespace
}  // namespace toft
