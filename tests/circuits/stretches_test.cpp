// Single-phase runs of two and three cables, of all families and some in pairs, drawn with a fixed
// seed and solved as circuits by ngspice, stretch by stretch: the faults at the far end.

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

namespace toft::several_cables {
namespace {

using study::Protective;
using support::measured;
using tables::Family;

constexpr int runs = 60;
constexpr double agreement = 1e-6;
constexpr double u0 = 230;

struct DrawnRun {
    site::Job job;
    study::RunScheme scheme;
    study::Setting<Silent> setting;
    study::Figures<Silent> figures;
};

class Dice {
public:
    std::size_t below(std::size_t count) { return random_() % count; }
    double between(double low, double high) {
        return low + (high - low) * static_cast<double>(below(100001)) / 100000.0;
    }

private:
    std::mt19937 random_{22};
};

study::Stretch any_stretch(Dice& dice, std::size_t number) {
    static constexpr Family families[] = {Family::flat_twin_and_earth, Family::armoured_pvc_copper,
                                          Family::armoured_xlpe_copper,
                                          Family::unarmoured_xlpe_copper};
    // Each stretch of another family than the one before it.
    const Family family = families[(number + dice.below(2) * 2) % 4];
    const auto cables = support::cables_of(family, family == families[0] ? 2 : 3);
    const auto& cable = *cables[1 + dice.below(cables.size() - 1)];
    if (!support::make(family).armoured) return support::stretch(cable, Protective::core);
    static constexpr Protective ways[] = {Protective::armour, Protective::core_and_armour,
                                          Protective::armour_and_separate};
    study::Stretch s = support::stretch(cable, ways[dice.below(3)], dice.below(3) ? 1 : 2);
    if (study::separate_serves(s.protective)) s.separate = &support::conductor(10);
    return s;
}

DrawnRun draw(Dice& dice) {
    DrawnRun run;
    std::vector<study::Stretch> stretches;
    std::vector<site::Leg> legs;
    const std::size_t count = 2 + dice.below(2);
    for (std::size_t i = 0; i < count; ++i) {
        stretches.push_back(any_stretch(dice, i));
        site::Leg leg = support::plain_leg(site::LegMethod::clipped, dice.between(3, 40));
        support::name_cable(leg, *stretches.back().cable);
        leg.live = square_millimetres(1.0 + static_cast<double>(i));  // never one and the same
        legs.push_back(leg);
    }
    run.scheme = support::scheme(stretches, support::fuse(32));
    run.job = support::job_with_legs(std::move(legs));
    run.job.intake.ze = measured(ohms(dice.between(0.02, 0.8)));
    run.job.intake.line_neutral_loop = measured(ohms(dice.between(0.02, 0.8)));
    return run;
}

/// An impedance of that size at the angle of `like`, or a right angle ahead of it.
Impedance at_angle(double size, const Impedance& like, bool square) {
    const std::complex<double> path(like.r.number(), like.x.number());
    const auto z = size * path / std::abs(path) * std::complex<double>(square ? 0 : 1, square);
    return {ohms(z.real()), ohms(z.imag())};
}

/// One fault at the far end: every conductor of every stretch a branch of its own.
class Fault {
public:
    Fault(const DrawnRun& run, study::Heat heat) : run_(run), heat_(heat) {}

    void lay_out(support::Circuit& circuit, const std::string& name, bool to_earth) const {
        Impedance all;
        for (std::size_t i = 0; i < run_.scheme.stretches; ++i) {
            const auto path = path_of(i);
            const double share = 1.0 / run_.scheme.stretch[i].parallel;
            const Impedance there = path.line + (to_earth ? path.serving : path.line);
            all = all + Impedance{there.r * share, there.x * share};
        }
        const auto& s = run_.setting.supply;
        const bool cold = heat_ == study::Heat::cold;
        const Ohms z = to_earth ? (cold ? s.ze_least : s.ze_most) : (cold ? s.zn_least : s.zn_most);
        circuit.source(name, name + "s", volts((cold ? s.c_max : s.c_min) * u0));
        circuit.impedance(name + "s", name + "l0", at_angle(z.number(), all, cold));
        circuit.ask_current(name, name);
        for (std::size_t i = 0; i < run_.scheme.stretches; ++i) branch(circuit, name, i, to_earth);
    }

private:
    study::FaultPath<Silent> path_of(std::size_t i) const {
        Silent ledger;
        study::Stretch one = run_.scheme.stretch[i];
        one.parallel = 1;
        return study::fault_path(ledger, run_.setting, one,
                                 {heat_, run_.setting.stretches[i].length_most, 0});
    }

    void branch(support::Circuit& circuit, const std::string& name, std::size_t i,
                bool to_earth) const {
        const study::Stretch& s = run_.scheme.stretch[i];
        const auto path = path_of(i);
        const auto near = [&](const char* side) {
            return side[0] == 'b' && i == 0 ? std::string("0")
                                            : fmt::format("{}{}{}", name, side, i);
        };
        // At the fault the line meets what leads back.
        const auto far = [&](const char* side) {
            if (i + 1 == run_.scheme.stretches) return name + "f";
            return fmt::format("{}{}{}", name, side, i + 1);
        };
        for (int k = 0; k < s.parallel; ++k) {
            circuit.impedance(near("l"), far("l"), path.line);
            if (!to_earth) {
                circuit.impedance(near("b"), far("b"), path.line);
                continue;
            }
            if (study::core_serves(s.protective)) {
                circuit.impedance(near("b"), far("b"), path.core);
            }
            if (study::armour_serves(s.protective)) {
                circuit.impedance(near("b"), far("b"), path.armour);
            }
            if (study::separate_serves(s.protective)) {
                circuit.impedance(near("b"), far("b"), path.separate);
            }
        }
    }

    const DrawnRun& run_;
    study::Heat heat_;
};

TEST(Stretches, SixtyRunsOfSeveralCablesAgreeWithNgspice) {
    Dice dice;
    int paired = 0;
    for (int i = 0; i < runs; ++i) {
        support::Circuit circuit;
        DrawnRun run = draw(dice);
        run.setting = support::prepared(run.job);
        ASSERT_EQ(run.setting.stretches.size(), run.scheme.stretches);
        Silent ledger;
        study::work_out(ledger, run.setting, run.scheme, study::Stage::current, run.figures);
        for (const auto& s : run.scheme.laid()) paired += s.parallel == 2;
        Fault(run, study::Heat::cold).lay_out(circuit, fmt::format("ec{}", i), true);
        Fault(run, study::Heat::cold).lay_out(circuit, fmt::format("nc{}", i), false);
        Fault(run, study::Heat::early).lay_out(circuit, fmt::format("ee{}", i), true);
        Fault(run, study::Heat::fault).lay_out(circuit, fmt::format("eh{}", i), true);
        Fault(run, study::Heat::fault).lay_out(circuit, fmt::format("nh{}", i), false);
        const auto answers = circuit.solve();
        const auto& last = run.figures.at[run.scheme.stretches - 1];
        const auto same = [&](const char* name, Amperes ours) {
            EXPECT_NEAR(ours.number() / answers.at(fmt::format("{}{}", name, i)), 1, agreement)
                << name << " of run " << i;
        };
        same("ec", run.figures.le_far);
        same("nc", run.figures.ln_far);
        same("ee", last.early.earth);
        same("eh", run.figures.le_least);
        same("nh", run.figures.ln_least);
    }
    EXPECT_GT(paired, 5);
}

}  // namespace
}  // namespace toft::several_cables
