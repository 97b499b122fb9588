// Three-phase runs drawn from the tables with a fixed seed, solved as circuits by ngspice: what the
// most loaded line loses against the program's sum of line and neutral, and what faults drive.

#include "cable/drop.h"
#include "study/figures.h"
#include "study/path.h"
#include "support/catalogue.h"
#include "support/draws.h"
#include "support/jobs.h"
#include "support/spice.h"

#include <gtest/gtest.h>

#include <fmt/format.h>

#include <cmath>
#include <complex>
#include <random>

namespace toft::three_phase {
namespace {

using study::Protective;
using support::measured;
using Complex = std::complex<double>;

constexpr int runs = 60;
constexpr double agreement = 1e-6;
constexpr double u0 = 230;

class Dice {
public:
    double between(double low, double high) {
        return low + (high - low) * static_cast<double>(random_() % 100001) / 100000.0;
    }
    std::size_t below(std::size_t count) { return random_() % count; }

private:
    std::mt19937 random_{21};
};

/// One stretch, laid in one way, of a cable with five cores or four.
struct DrawnRun {
    site::Job job;
    study::RunScheme scheme;
    study::Setting<Silent> setting;
    study::Figures<Silent> figures;
    std::array<double, 3> line_a{};
    double power_factor = 1;
};

site::Circuit load(int phases, double amperes, double power_factor) {
    site::Circuit circuit;
    circuit.name = "load";
    circuit.phases = phases;
    circuit.load_w = measured(amperes * phases * u0 * power_factor);
    circuit.power_factor = measured(power_factor);
    return circuit;
}

/// `i` tells the sort of load: balanced, one line alone, or three circuits on as many lines.
void load_lines(Dice& dice, int i, DrawnRun& run) {
    auto& circuits = run.job.buildings[1].circuits;
    run.job.wishes.scenario = site::Scenario::everything;
    run.job.buildings[1].load = {};
    run.job.buildings[1].power_factor = {};
    run.power_factor = i % 5 == 4 ? 1 : dice.between(0.5, 1);
    const double all = i % 3 == 1 ? 0 : dice.between(0.5, 10);
    run.line_a = {all, all, all};
    if (all > 0) circuits.push_back(load(3, all, run.power_factor));
    const int singles = i % 3 == 0 ? 0 : i % 3 == 1 ? 1 : 3;
    double last = dice.between(5, 15);
    for (int k = 0; k < singles; ++k) {
        circuits.push_back(load(1, last, run.power_factor));
        run.line_a[static_cast<std::size_t>(k)] += last;  // each on a line of its own
        last *= dice.between(0.05, 1);
    }
    if (dice.below(2)) std::swap(run.line_a[1], run.line_a[2]);  // the other way round
}

DrawnRun draw(Dice& dice, int i) {
    DrawnRun run;
    const int cores = dice.below(2) ? 5 : 4;
    const auto cables = support::cables_of(cores);
    const auto protective = cores == 5 ? Protective::core_and_armour : Protective::armour;
    const std::size_t size = 2 + dice.below(cables.size() - 2);
    run.scheme = support::scheme(*cables[size], protective, support::fuse(63));
    run.scheme.phases = 3;
    site::Leg leg = support::plain_leg(site::LegMethod::clipped, dice.between(3, 60));
    leg.ambient = measured(celsius(dice.between(10, 35)));
    run.job = support::on_three_phases(support::job_with_legs({leg}));
    run.job.intake.ze = measured(ohms(dice.between(0.02, 0.5)));
    run.job.intake.line_neutral_loop = measured(ohms(dice.between(0.02, 0.5)));
    load_lines(dice, i, run);
    return run;
}

void work_out(DrawnRun& run) {
    Silent ledger;
    run.setting = support::prepared(run.job);
    study::work_out(ledger, run.setting, run.scheme, study::Stage::current, run.figures);
}

/// What one core loses a metre and ampere, at the conductor temperature of the program's own drop:
/// the tabulated figure is line to line, the root of three times that of a core. The resistive part
/// is the one that the drop of a balanced load needs.
Impedance core_of(const DrawnRun& run) {
    Silent ledger;
    const auto& leg = run.setting.legs[0];
    const auto& make = tables::make_of(support::catalogue(), *run.scheme.first().cable);
    const auto drop = cable::leg_drop(
        ledger, cable::DropInput<Silent>{support::catalogue().cable_constants, make,
                                         run.scheme.first().cable->three,
                                         study::factors_of(leg, run.scheme.first()), 3,
                                         run.setting.ib, 0.0, leg.surroundings, leg.length, 1});
    return drop.loop;
}

Complex phasor(const Impedance& z) { return {z.r.number(), z.x.number()}; }

/// Largest loss of magnitude, line to neutral, of three constant currents each lagging the voltage
/// at its own load. Iterates the voltages until they stand still.
struct Lost {
    double volts = 0;
    std::array<Complex, 3> load{};  ///< voltage at the loads
    std::array<Complex, 3> current{};
};
Lost true_loss(const DrawnRun& run) {
    const Complex z = phasor(core_of(run));
    const double phi = std::acos(run.power_factor);
    const double third = 2 * std::acos(-1.0) / 3;
    Lost lost;
    for (int k = 0; k < 3; ++k) lost.load[std::size_t(k)] = std::polar(u0, -third * k);
    for (int round = 0; round < 200; ++round) {
        Complex neutral;
        for (std::size_t k = 0; k < 3; ++k) {
            lost.current[k] = std::polar(run.line_a[k], std::arg(lost.load[k]) - phi);
            neutral += lost.current[k];
        }
        for (std::size_t k = 0; k < 3; ++k) {
            const Complex source = std::polar(u0, -third * static_cast<double>(k));
            lost.load[k] = source - (lost.current[k] + neutral) * z;
        }
    }
    for (std::size_t k = 0; k < 3; ++k) {
        if (run.line_a[k] > 0) lost.volts = std::fmax(lost.volts, u0 - std::abs(lost.load[k]));
    }
    return lost;
}

/// Three sources, three lines and their neutral, and loads that take the currents of `lost`.
void lay_out_loads(support::Circuit& circuit, const DrawnRun& run, const Lost& lost, int i) {
    const Impedance z = core_of(run);
    const auto node = [&](const char* name, std::size_t k) {
        return fmt::format("{}{}x{}", name, i, k);
    };
    const std::string star = fmt::format("star{}", i);
    circuit.impedance(star, "0", z);
    for (std::size_t k = 0; k < 3; ++k) {
        circuit.source(node("s", k), node("so", k), volts(u0), -120.0 * static_cast<double>(k));
        circuit.impedance(node("so", k), node("lo", k), z);
        if (run.line_a[k] <= 0) {
            circuit.impedance(node("lo", k), star, {ohms(1e9), ohms(0)});
            continue;
        }
        const Complex ratio = lost.load[k] / lost.current[k];
        circuit.impedance(node("lo", k), star, {ohms(ratio.real()), ohms(ratio.imag())});
        circuit.ask_voltage_between(node("left", k), node("lo", k), star);
    }
}

TEST(ThreePhase, NoLoadHoweverSpreadLosesMoreThanTheProgramSays) {
    Dice dice;
    support::Circuit circuit;
    std::vector<DrawnRun> drawn;
    for (int i = 0; i < runs; ++i) {
        drawn.push_back(draw(dice, i));
        work_out(drawn.back());
        lay_out_loads(circuit, drawn.back(), true_loss(drawn.back()), i);
    }
    const auto answers = circuit.solve();
    int equal = 0;
    for (int i = 0; i < runs; ++i) {
        const DrawnRun& run = drawn[static_cast<std::size_t>(i)];
        double theirs = 0;
        for (std::size_t k = 0; k < 3; ++k) {
            if (run.line_a[k] <= 0) continue;
            theirs = std::fmax(theirs, u0 - answers.at(fmt::format("left{}x{}", i, k)));
        }
        EXPECT_NEAR(theirs, true_loss(run).volts, 1e-5) << "ngspice and phasors, run " << i;
        const double ours = run.figures.drop.number();
        // Loads unlike each other turn their own voltages a little, and the currents with them.
        EXPECT_GE(ours, theirs * (1 - (i % 3 == 2 ? 5e-3 : agreement)))
            << "run " << i << " at " << run.power_factor;
        if (i % 3 == 2) continue;
        EXPECT_NEAR(ours / theirs, 1, 1e-5) << "balanced or on one line, run " << i;
        ++equal;
    }
    EXPECT_EQ(equal, 2 * runs / 3);
}

/// Faults with the sources the program assumes: a line's own impedance from Zn by its share, added
/// in quadrature for the largest and as a plain sum for the smallest.
struct Sources {
    Impedance least;
    Impedance most;
};
Sources sources(double z, const Impedance& path) {
    const double length = std::hypot(path.r.number(), path.x.number());
    const Complex along = Complex(path.r.number(), path.x.number()) / length * z;
    const Complex across(-along.imag(), along.real());  // a right angle ahead of the path
    return {{ohms(across.real()), ohms(across.imag())}, {ohms(along.real()), ohms(along.imag())}};
}

class Faults {
public:
    Faults(const DrawnRun& run, int i) : run_(run), i_(i) {
        const Metres length = run.setting.length_most;
        Silent ledger;
        cold_ = study::fault_path(ledger, run.setting, run.scheme.first(),
                                  {study::Heat::cold, length, 0});
        hot_ = study::fault_path(ledger, run.setting, run.scheme.first(),
                                 {study::Heat::fault, length, 0});
    }

    /// All the faults of one run: three lines, line to line, line to neutral, line to earth.
    void lay_out(support::Circuit& circuit) {
        const auto& s = run_.setting.supply;
        lines(circuit, "3c", s.zl_least.number(), cold_.line, true);
        lines(circuit, "3h", s.zl_most.number(), hot_.line, false);
        one(circuit, "nc", s.zn_least.number(), cold_.line + cold_.line, true);
        one(circuit, "nh", s.zn_most.number(), hot_.line + hot_.line, false);
        one(circuit, "ec", s.ze_least.number(), cold_.line + cold_.serving, true);
        one(circuit, "eh", s.ze_most.number(), hot_.line + hot_.serving, false);
    }

    void expect(const std::map<std::string, double>& answers) const {
        const auto& f = run_.figures;
        const auto same = [&](const char* name, Amperes ours) {
            const double theirs = answers.at(fmt::format("{}{}", name, i_));
            EXPECT_NEAR(ours.number() / theirs, 1, agreement) << name << " of run " << i_;
        };
        same("nearlll3c", f.lll_near);
        same("farlll3c", f.lll_far);
        same("nearll3c", f.ll_near);
        same("farll3c", f.ll_far);
        same("nearll3h", f.ll_near_least);
        same("farll3h", f.ll_least);
        same("nearnc", f.ln_near);
        same("farnc", f.ln_far);
        same("nearnh", f.ln_near_least);
        same("farnh", f.ln_least);
        same("nearec", f.le_near);
        same("farec", f.le_far);
        same("neareh", f.le_near_least);
        same("fareh", f.le_least);
    }

private:
    /// A star of three sources behind `path`, its far end joined: all three lines, or two of them.
    void star(support::Circuit& circuit, const std::string& name, Impedance z, double volts_to_n,
              int lines) {
        for (int k = 0; k < lines; ++k) {
            const std::string own = fmt::format("{}k{}", name, k);
            circuit.source(own, own + "s", volts(volts_to_n), -120.0 * k);
            circuit.impedance(own + "s", name + "f", z);
        }
        circuit.ask_current(name, fmt::format("{}k0", name));
    }

    double factor(bool largest) const {
        return largest ? run_.setting.supply.c_max : run_.setting.supply.c_min;
    }

    void lines(support::Circuit& circuit, const char* kind, double z, const Impedance& path,
               bool largest) {
        const double c = factor(largest);
        const Sources at = sources(z, path);
        const Impedance source = largest ? at.least : at.most;
        const auto name = [&](const char* what) { return fmt::format("{}{}{}", what, kind, i_); };
        star(circuit, name("nearlll"), source, c * u0, 3);
        star(circuit, name("farlll"), source + path, c * u0, 3);
        star(circuit, name("nearll"), source, c * u0, 2);
        star(circuit, name("farll"), source + path, c * u0, 2);
    }

    void one(support::Circuit& circuit, const char* kind, double z, const Impedance& path,
             bool largest) {
        const double c = factor(largest);
        const Sources at = sources(z, path);
        const Impedance source = largest ? at.least : at.most;
        for (const char* place : {"near", "far"}) {
            const std::string name = fmt::format("{}{}{}", place, kind, i_);
            circuit.source(name, name + "s", volts(c * u0));
            const bool near = place == std::string("near");
            circuit.impedance(name + "s", "0", near ? source : source + path);
            circuit.ask_current(name, name);
        }
    }

    const DrawnRun& run_;
    int i_;
    study::FaultPath<Silent> cold_;
    study::FaultPath<Silent> hot_;
};

TEST(ThreePhase, FaultsNearAndFarAgreeWithNgspice) {
    Dice dice;
    support::Circuit circuit;
    std::vector<DrawnRun> drawn;
    drawn.reserve(runs);
    std::vector<Faults> faults;
    for (int i = 0; i < runs; ++i) {
        drawn.push_back(draw(dice, i));
        work_out(drawn.back());
        faults.emplace_back(drawn.back(), i);
        faults.back().lay_out(circuit);
    }
    const auto answers = circuit.solve();
    for (const Faults& fault : faults) fault.expect(answers);
}

}  // namespace
}  // namespace toft::three_phase
