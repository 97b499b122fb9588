// Three runs one behind the other, drawn with a fixed seed and solved as one circuit by ngspice:
// the loops that the program reckons run by run must bound the whole circuit's.

#include "study/figures.h"
#include "study/path.h"
#include "support/catalogue.h"
#include "support/jobs.h"
#include "support/spice.h"
#include "support/trees.h"

#include <gtest/gtest.h>

#include <fmt/format.h>

#include <cmath>
#include <random>

namespace toft {
namespace {

constexpr int chains = 20;
constexpr double degrees[] = {0, 30, 60, 85};
constexpr double to_earth = 230;

struct RowDice {
    std::mt19937 random{41};
    double between(double low, double high) {
        return low + (high - low) * static_cast<double>(random() % 100001) / 100000.0;
    }
    template <class T, std::size_t n>
    T one(const T (&of)[n]) {
        return of[random() % n];
    }
};

/// Conductors from the house on, and what the program says of the place they reach.
struct Reached {
    Impedance line_hot, back_hot, line_cold, back_cold;
    study::Incoming said;
    Ohms ze_most, ze_least, zn_most, zn_least;  ///< of the supply
};

study::RunScheme drawn_scheme(RowDice& dice) {
    static constexpr double sections[] = {4, 10, 16, 25};
    static constexpr study::Protective protects[] = {
        study::Protective::armour, study::Protective::core, study::Protective::core_and_armour};
    return support::scheme(support::cable(3, dice.one(sections)), dice.one(protects),
                           support::breaker("B", 32));
}

/// After each of three runs.
std::vector<Reached> reached(RowDice& dice, site::Job& job) {
    job = support::tree_job({support::the_house, 0, 1});
    job.intake.ze = support::measured(ohms(dice.between(0.05, 0.8)));
    job.intake.line_neutral_loop = support::measured(ohms(dice.between(0.05, 0.4)));
    for (site::Run& run : job.runs) {
        run.legs[0].length = support::measured(metres(dice.between(3, 60)));
    }
    std::vector<Reached> all;
    Silent silent;
    for (std::size_t i = 0; i < 3; ++i) {
        const auto scheme = drawn_scheme(dice);
        study::RunAt at{i, 1};
        if (i > 0) at.incoming = &all.back().said;
        const auto s = study::prepare(silent, support::catalogue(), job, at, {});
        study::Figures<Silent> figures;
        study::work_out(silent, s, scheme, study::Stage::current, figures);
        const auto hot = study::fault_path(
            silent, s, scheme.first(),
            study::PathAt<Silent>{study::Heat::fault, s.stretches[0].length_most, 0});
        const auto cold = study::fault_path(
            silent, s, scheme.first(),
            study::PathAt<Silent>{study::Heat::cold, s.stretches[0].length_least, 0});
        Reached here{hot.line, hot.serving, cold.line, cold.serving, {}, {}, {}, {}, {}};
        if (i == 0) {
            here.ze_most = s.supply.ze_hot;
            here.ze_least = s.supply.ze_least;
            here.zn_most = s.supply.zn_most;
            here.zn_least = s.supply.zn_least;
        } else {
            const Reached& last = all.back();
            here.line_hot = last.line_hot + here.line_hot;
            here.back_hot = last.back_hot + here.back_hot;
            here.line_cold = last.line_cold + here.line_cold;
            here.back_cold = last.back_cold + here.back_cold;
            here.ze_most = last.ze_most;
            here.ze_least = last.ze_least;
            here.zn_most = last.zn_most;
            here.zn_least = last.zn_least;
        }
        here.said = study::left_at_board(s, scheme, figures);
        all.push_back(here);
    }
    return all;
}

Impedance turned(Ohms z, double angle) {
    const double turn = angle * std::acos(-1.0) / 180;
    return {ohms(z.number() * std::cos(turn)), ohms(z.number() * std::sin(turn))};
}

void ask(support::Circuit& net, const std::string& name, const Impedance& supply,
         const Impedance& run) {
    net.source("s" + name, "a" + name, volts(to_earth));
    net.impedance("a" + name, "b" + name, supply);
    net.impedance("b" + name, "0", run);
    net.ask_current("i" + name, "s" + name);
}

struct Bound {
    std::string name;
    double ohms;
    bool at_most;  ///< the circuit's loop must be at most this; else at least
    bool in_line;  ///< all its parts have nearly the same angle
};

TEST(RunsInARow, LoopsReckonedRunByRunBoundThoseOfTheWholeCircuit) {
    RowDice dice;
    support::Circuit net;
    std::vector<Bound> bounds;
    for (int chain = 0; chain < chains; ++chain) {
        site::Job job;
        const auto places = reached(dice, job);
        for (std::size_t p = 0; p < places.size(); ++p) {
            const Reached& r = places[p];
            for (const double angle : degrees) {
                const auto named = [&](const char* what) {
                    return fmt::format("{}c{}p{}d{}", what, chain, p, angle);
                };
                const auto add = [&](const char* what, Ohms supply, const Impedance& run, Ohms said,
                                     bool at_most) {
                    ask(net, named(what), turned(supply, angle), run);
                    bounds.push_back({named(what), said.number(), at_most, angle == 0});
                };
                add("eh", r.ze_most, r.line_hot + r.back_hot, r.said.ze_hot, true);
                add("nh", r.zn_most, r.line_hot + r.line_hot, r.said.zn_hot, true);
                add("ec", r.ze_least, r.line_cold + r.back_cold, r.said.ze_least, false);
                add("nc", r.zn_least, r.line_cold + r.line_cold, r.said.zn_least, false);
            }
        }
    }
    const auto answers = net.solve();
    for (const Bound& b : bounds) {
        const double loop = to_earth / answers.at("i" + b.name);
        if (b.at_most) {
            EXPECT_LE(loop, b.ohms * (1 + 1e-5)) << b.name;
            if (b.in_line) {
                EXPECT_GE(loop, b.ohms * 0.98) << b.name;
            }
        } else {
            EXPECT_GE(loop, b.ohms * (1 - 1e-5)) << b.name;
        }
    }
    EXPECT_EQ(bounds.size(), std::size_t{chains} * 3 * 4 * 4);
}

}  // namespace
}  // namespace toft
