// A hundred single-phase runs, each drawn from the tables with a fixed seed, worked out by the
// program and solved as circuits by ngspice. They must agree to a millionth.

#include "network/drop.h"
#include "network/loop.h"
#include "study/path.h"
#include "support/catalogue.h"
#include "support/draws.h"
#include "support/jobs.h"
#include "support/spice.h"

#include <gtest/gtest.h>

#include <fmt/format.h>

#include <cmath>
#include <random>

namespace toft::single_phase {
namespace {

constexpr int runs = 100;
constexpr double agreement = 1e-6;
constexpr double u0 = 230;
const Name unnamed{"x", ""};

/// Numbers that are the same on every machine.
class Dice {
public:
    double between(double low, double high) {
        return low + (high - low) * static_cast<double>(random_() % 100001) / 100000.0;
    }
    template <class T>
    const T& one_of(const std::vector<T>& list) {
        return list[random_() % list.size()];
    }

private:
    std::mt19937 random_{20};
};

/// One run, and what the program says of it.
struct DrawnRun {
    Impedance source;
    study::FaultPath<Silent> path;
    Impedance drop_line;  ///< line and neutral together, as the drop is taken
    double load_a = 0;
    double power_factor = 1;
    study::Protective protective = study::Protective::armour;
    double earth_fault_a = 0;
    double neutral_fault_a = 0;
    double load_v = 0;
};

DrawnRun draw(Dice& dice) {
    using study::Protective;
    Silent ledger;
    DrawnRun run;
    const double length = dice.between(3, 120);
    run.protective =
        dice.one_of<Protective>({Protective::armour, Protective::core, Protective::core_and_armour,
                                 Protective::separate, Protective::armour_and_separate});
    const auto& cable = *dice.one_of(support::cables_of(3));
    study::RunScheme scheme = support::scheme(cable, run.protective, support::fuse(32));
    if (study::separate_serves(run.protective)) {
        scheme.first().separate = dice.one_of(support::copper_conductors());
    }
    study::Setting<Silent> setting;
    setting.catalogue = &support::catalogue();
    const auto heat = dice.one_of<study::Heat>(
        {study::Heat::cold, study::Heat::working, study::Heat::early, study::Heat::fault});
    run.path = study::fault_path(ledger, setting, scheme.first(), {heat, metres(length), 0});
    run.source = {ohms(dice.between(0.01, 0.8)), ohms(dice.between(0.005, 0.3))};
    run.drop_line = {cable.two.drop_r.value * metres(length),
                     cable.two.drop_x.value * metres(length)};
    run.load_a = dice.between(1, 30 / (1 + run.drop_line.r.number()));
    run.power_factor = dice.between(0.5, 1);

    const auto current = [&](const Impedance& loop) {
        return network::fault_current(ledger, unnamed, 1.0, volts(u0), magnitude(loop)).number();
    };
    run.earth_fault_a = current(run.source + run.path.line + run.path.serving);
    run.neutral_fault_a = current(run.source + run.path.line + run.path.line);
    run.load_v =
        u0 - network::line_drop(ledger, volts(u0),
                                network::Loading<Silent>{amperes(run.load_a), run.power_factor, 0},
                                run.drop_line)
                 .number();
    return run;
}

/// The three circuits of run `i`: an earth fault, a line-neutral fault, the load.
void lay_out(support::Circuit& circuit, const DrawnRun& run, int i) {
    const auto node = [&](const char* name) { return fmt::format("{}{}", name, i); };
    circuit.source(node("e"), node("es"), volts(u0));
    circuit.impedance(node("es"), node("eo"), run.source);
    circuit.impedance(node("eo"), node("ef"), run.path.line);
    if (study::core_serves(run.protective)) circuit.impedance(node("ef"), "0", run.path.core);
    if (study::armour_serves(run.protective)) circuit.impedance(node("ef"), "0", run.path.armour);
    if (study::separate_serves(run.protective)) {
        circuit.impedance(node("ef"), "0", run.path.separate);
    }
    circuit.ask_current(node("earth"), node("e"));

    circuit.source(node("n"), node("ns"), volts(u0));
    circuit.impedance(node("ns"), node("no"), run.source);
    circuit.impedance(node("no"), node("nf"), run.path.line);
    circuit.impedance(node("nf"), "0", run.path.line);
    circuit.ask_current(node("neutral"), node("n"));

    // The impedance that takes the load's current at the load's power factor from the voltage that
    // the program says is left. If that voltage is wrong, ngspice finds another current.
    const double z = run.load_v / run.load_a;
    const double sine = std::sqrt(1 - run.power_factor * run.power_factor);
    circuit.source(node("l"), node("ls"), volts(u0));
    circuit.impedance(node("ls"), node("ll"), run.drop_line);
    circuit.impedance(node("ll"), "0", {ohms(z * run.power_factor), ohms(z * sine)});
    circuit.ask_current(node("load"), node("l"));
    circuit.ask_voltage(node("left"), node("ll"));
}

TEST(SinglePhase, AHundredRunsAgreeWithNgspice) {
    Dice dice;
    std::vector<DrawnRun> drawn;
    support::Circuit circuit;
    for (int i = 0; i < runs; ++i) {
        drawn.push_back(draw(dice));
        lay_out(circuit, drawn.back(), i);
    }
    const auto answers = circuit.solve();
    ASSERT_EQ(answers.size(), 4u * runs);
    for (int i = 0; i < runs; ++i) {
        const DrawnRun& run = drawn[static_cast<std::size_t>(i)];
        const auto expect = [&](const char* name, double ours) {
            const double theirs = answers.at(fmt::format("{}{}", name, i));
            EXPECT_GT(ours, 0) << name << " of run " << i;
            EXPECT_NEAR(ours / theirs, 1, agreement) << name << " of run " << i;
        };
        expect("earth", run.earth_fault_a);
        expect("neutral", run.neutral_fault_a);
        expect("load", run.load_a);
        expect("left", run.load_v);
    }
}

TEST(SinglePhase, ADropOfAWrongSignWouldBeNoticed) {
    Dice dice;
    DrawnRun run = draw(dice);
    run.load_v = u0 + (u0 - run.load_v);
    support::Circuit circuit;
    lay_out(circuit, run, 0);
    EXPECT_GT(std::fabs(run.load_a / circuit.solve().at("load0") - 1), 100 * agreement);
}

}  // namespace
}  // namespace toft::single_phase
