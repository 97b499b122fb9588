#include "network/lost_neutral.h"

#include "network/terminal_rise.h"
#include "support/draws.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>
#include <stdexcept>

namespace toft::network {
namespace {

FloatingLoad load(std::size_t line, double watts) {
    return {LoadKind::constant_impedance, {watts}, 1, false, line};
}

FloatingLoad constant(std::size_t line, double watts) {
    return {LoadKind::constant_power, {watts}, 1, false, line};
}

FloatingTerminal solved(const LostNeutral& circuit) {
    const auto result = lost_neutral(circuit);
    if (!result) throw std::runtime_error(result.error().front().says);
    return *result;
}

LostNeutral one_line(double watts, double earth, double u = 230) {
    return {volts(230), single_phase(volts(u)), {load(0, watts)}, {{"all", ohms(earth)}}};
}

LostNeutral three_lines(double a, double b, double c, double earth) {
    LostNeutral circuit{
        volts(230), three_phase(volts(230)), {load(0, a), load(1, b), load(2, c)}, {}};
    if (earth > 0) circuit.paths = {{"all", ohms(earth)}};
    return circuit;
}

/// Own arithmetic of another hand, printed to a tenth of a volt: 230 V, resistive load.
TEST(LostNeutral, RiseAgainstLoadAndEarthIsThatOfTheTable) {
    const struct {
        double kw;
        double rise[8];
    } rows[] = {{0.5, {2.2, 4.3, 10.4, 19.9, 36.6, 73.8, 111.8, 150.4}},
                {1, {4.3, 8.4, 19.9, 36.6, 63.1, 111.8, 150.4, 181.9}},
                {2, {8.4, 16.2, 36.6, 63.1, 99.0, 150.4, 181.9, 203.1}},
                {3, {12.3, 23.4, 50.8, 83.2, 122.2, 170.0, 195.5, 211.4}},
                {5, {19.9, 36.6, 73.8, 111.8, 150.4, 189.8, 208.0, 218.4}},
                {7.4, {28.2, 50.3, 94.7, 134.1, 169.4, 201.2, 214.7, 222.1}},
                {10, {36.6, 63.1, 111.8, 150.4, 181.9, 208.0, 218.4, 224.1}},
                {15, {50.8, 83.2, 134.9, 170.0, 195.5, 214.8, 222.2, 226.0}},
                {23, {69.7, 107.0, 157.5, 187.0, 206.3, 219.9, 224.8, 227.4}}};
    const double earths[] = {1, 2, 5, 10, 20, 50, 100, 200};
    for (const auto& row : rows) {
        for (std::size_t i = 0; i < 8; ++i) {
            const FloatingTerminal found = solved(one_line(row.kw * 1000, earths[i]));
            EXPECT_NEAR(found.magnitude.number(), row.rise[i], 0.051) << row.kw << " " << earths[i];
            EXPECT_NEAR(found.left[0].number(), 230 - row.rise[i], 0.051);
        }
    }
}

/// Own arithmetic of another hand, in whole volts.
TEST(LostNeutral, ThreeUnevenLinesPullTheStarPointAside) {
    const struct {
        double earth, rise, left[3];
    } rows[] = {{1, 23, {209, 234, 249}}, {20, 82, {157, 255, 299}}, {0, 95, {146, 261, 310}}};
    for (const auto& row : rows) {
        const FloatingTerminal found = solved(three_lines(10000, 5000, 2000, row.earth));
        EXPECT_NEAR(found.magnitude.number(), row.rise, 0.51) << row.earth;
        for (std::size_t i = 0; i < 3; ++i) EXPECT_NEAR(found.left[i].number(), row.left[i], 0.51);
    }
    EXPECT_NEAR(solved(three_lines(10000, 5000, 2000, 5)).magnitude.number(), 58, 0.51);
    EXPECT_NEAR(solved(three_lines(7000, 0, 0, 20)).magnitude.number(), 167, 0.51);
    EXPECT_NEAR(solved(three_lines(10000, 8000, 6000, 20)).magnitude.number(), 30, 0.51);
}

/// Mitolo, Electrical Safety of Low-Voltage Systems, equation 8.1: a line that touches ground lifts
/// a neutral earthed through R_N to V_ph R_N/(R_E + R_N). It is the same circuit.
TEST(LostNeutral, ALineDownOnTheGroundLiftsTheNeutralInTheSameWay) {
    for (double line_to_ground : {10.0, 36.0, 100.0}) {
        const double watts = 230 * 230 / line_to_ground;
        EXPECT_NEAR(solved(one_line(watts, 10)).magnitude.number(),
                    230 * 10 / (line_to_ground + 10), 1e-9);
    }
}

TEST(LostNeutral, WithoutLoadOrWithEvenLinesNothingIsLifted) {
    EXPECT_EQ(solved(one_line(0, 50)).magnitude, volts(0));
    EXPECT_NEAR(solved(three_lines(4000, 4000, 4000, 50)).magnitude.number(), 0, 1e-9);
}

TEST(LostNeutral, WithoutAnyPathToEarthTheMetalHasTheWholeVoltage) {
    LostNeutral circuit = one_line(100, 1);
    circuit.paths.clear();
    EXPECT_NEAR(solved(circuit).magnitude.number(), 230, 1e-9);
    EXPECT_EQ(solved(circuit).earth, amperes(0));
}

TEST(LostNeutral, PathsShareTheCurrentByTheirConductance) {
    LostNeutral circuit = one_line(3000, 20);
    circuit.paths.push_back({"pipe", ohms(5)});
    const FloatingTerminal found = solved(circuit);
    EXPECT_NEAR(found.magnitude.number(), solved(one_line(3000, 4)).magnitude.number(), 1e-9);
    ASSERT_EQ(found.paths.size(), 2u);
    EXPECT_NEAR(found.paths[1] / found.paths[0], 4, 1e-12);
    EXPECT_NEAR((found.paths[0] + found.paths[1]).number(), found.earth.number(), 1e-12);
}

/// V² − U V + P R = 0: V = (U − √(U² − 4 P R))/2 as long as 4 P R is at most U².
double by_quadratic(double watts, double earth) {
    return (230 - std::sqrt(230 * 230 - 4 * watts * earth)) / 2;
}

TEST(LostNeutral, ConstantPowerTakesMoreThanAHeaterOfTheSamePower) {
    for (double watts : {500.0, 1000.0, 2000.0, 2600.0}) {
        LostNeutral circuit = one_line(watts, 5);
        const double heater = solved(circuit).magnitude.number();
        circuit.loads[0].kind = LoadKind::constant_power;
        const double rise = solved(circuit).magnitude.number();
        EXPECT_NEAR(rise, by_quadratic(watts, 5), 1e-6);
        EXPECT_GT(rise, heater);
    }
}

TEST(LostNeutral, PastTheLargestPowerThereIsNoSteadyState) {
    const double largest = 230.0 * 230 / 4 / 5;
    LostNeutral circuit = one_line(largest * 0.9999, 5);
    circuit.loads[0].kind = LoadKind::constant_power;
    EXPECT_EQ(solved(circuit).state, FloatingState::steady);
    EXPECT_NEAR(solved(circuit).magnitude.number(), by_quadratic(largest * 0.9999, 5), 1e-4);
    circuit.loads[0].power.watts = largest * 1.0001;
    const FloatingTerminal lost = solved(circuit);
    EXPECT_EQ(lost.state, FloatingState::collapsed);
    EXPECT_NEAR(lost.bound.number(), 230, 1e-9);
    EXPECT_TRUE(lost.left.empty());
}

TEST(LostNeutral, ConstantPowerWithNothingToHoldItCollapses) {
    LostNeutral circuit{volts(230), single_phase(volts(230)), {constant(0, 100)}, {}};
    EXPECT_EQ(solved(circuit).state, FloatingState::collapsed);
    circuit.lines = three_phase(volts(230));
    circuit.loads = {constant(0, 1000), constant(1, 1000), constant(2, 1000)};
    EXPECT_EQ(solved(circuit).state, FloatingState::collapsed);
}

TEST(LostNeutral, UnlikePowerFactorsMayLiftTheTerminalAboveAnyLine) {
    double highest = 0;
    for (std::size_t heater : {std::size_t{1}, std::size_t{2}}) {
        LostNeutral circuit{volts(230), three_phase(volts(230)), {load(heater, 3000)}, {}};
        circuit.loads.push_back({LoadKind::constant_impedance, {150}, 0.05, false, 3 - heater});
        const FloatingTerminal found = solved(circuit);
        EXPECT_LE(found.magnitude, found.bound);
        highest = std::fmax(highest, found.magnitude.number());
    }
    EXPECT_GT(highest, 290);
}

TEST(LostNeutral, SaysAllThatIsWrongWithACircuit) {
    LostNeutral circuit{
        volts(0), {}, {{LoadKind::constant_power, {-1}, 0, false, 4}}, {{"rod", ohms(0)}}};
    const auto result = lost_neutral(circuit);
    ASSERT_FALSE(result);
    EXPECT_EQ(result.error().size(), 6u);
    EXPECT_EQ(result.error().back().pointer, "/paths/0");
    EXPECT_FALSE(lost_neutral({volts(230), single_phase(volts(230)), {load(0, 0)}, {}}));
}

std::vector<EarthPath> any_paths() {
    std::vector<EarthPath> paths;
    const int count = *rc::gen::inRange(1, 4);
    for (int i = 0; i < count; ++i)
        paths.push_back({"path", ohms(support::drawn_between(0.5, 200))});
    return paths;
}

RC_GTEST_PROP(LostNeutralLaws, MoreLoadOnOneLineNeverLowersTheRise, ()) {
    LostNeutral circuit{
        volts(230),
        single_phase(volts(support::drawn_between(207, 253))),
        {load(0, support::drawn_between(0, 20000)), constant(0, support::drawn_between(0, 3000))},
        any_paths()};
    const FloatingTerminal before = solved(circuit);
    circuit.loads[*rc::gen::inRange(0, 2)].power.watts += support::drawn_between(0, 5000);
    const FloatingTerminal after = solved(circuit);
    if (before.state == FloatingState::collapsed) {
        RC_ASSERT(after.state == FloatingState::collapsed);
    } else if (after.state == FloatingState::steady) {
        RC_ASSERT(after.magnitude.number() >= before.magnitude.number() - 1e-9);
    }
}

/// With x = E − V left for a heater Y and a constant power P: x² (Y + 1/R) − x E/R + P = 0.
RC_GTEST_PROP(LostNeutralLaws, ItCollapsesExactlyWhereTheQuadraticHasNoRoot, ()) {
    const double heater = support::drawn_between(0, 10000), power = support::drawn_between(1, 6000),
                 earth = support::drawn_between(0.5, 100);
    const double slope = heater / (230 * 230) + 1 / earth;
    const double root_of = 230 * 230 / (earth * earth) - 4 * power * slope;
    RC_PRE(std::fabs(root_of) > 1e-6 * 230 * 230 / (earth * earth));
    const FloatingTerminal found = solved({volts(230),
                                           single_phase(volts(230)),
                                           {load(0, heater), constant(0, power)},
                                           {{"all", ohms(earth)}}});
    RC_ASSERT((found.state == FloatingState::steady) == (root_of > 0));
    if (root_of > 0) {
        const double left = (230 / earth + std::sqrt(root_of)) / (2 * slope);
        RC_ASSERT(std::fabs(found.left[0].number() - left) < 1e-5);
    }
}

RC_GTEST_PROP(LostNeutralLaws, BetterEarthNeverRaisesTheTerminal, ()) {
    LostNeutral circuit{
        volts(230), three_phase(volts(support::drawn_between(207, 253))), {}, any_paths()};
    for (std::size_t line = 0; line < 3; ++line) {
        circuit.loads.push_back(load(line, support::drawn_between(0, 15000)));
    }
    const Volts before = solved(circuit).magnitude;
    circuit.paths.push_back({"one more", ohms(support::drawn_between(0.5, 200))});
    RC_ASSERT(solved(circuit).magnitude.number() <= before.number() + 1e-9);
}

RC_GTEST_PROP(LostNeutralLaws, ASteadyTerminalKeepsToItsBoundAndItsBalance, ()) {
    LostNeutral circuit{volts(230), three_phase(volts(230)), {}, any_paths()};
    for (std::size_t line = 0; line < 3; ++line) {
        const bool leading = *rc::gen::arbitrary<bool>();
        const bool power = *rc::gen::arbitrary<bool>();
        circuit.loads.push_back({power ? LoadKind::constant_power : LoadKind::constant_impedance,
                                 {support::drawn_between(0, 8000)},
                                 support::drawn_between(0.3, 1),
                                 leading,
                                 line});
    }
    const FloatingTerminal found = solved(circuit);
    if (found.state == FloatingState::collapsed) return;
    RC_ASSERT(found.magnitude.number() <= found.bound.number() * (1 + 1e-9) + 1e-9);
    std::complex<double> into;
    for (const FloatingLoad& one : circuit.loads) {
        const auto across = std::polar(230.0, -120.0 * static_cast<double>(one.line) *
                                                  3.14159265358979323846 / 180) -
                            found.terminal;
        const double vars = one.power.watts * std::tan(std::acos(one.power_factor));
        const std::complex<double> s(one.power.watts, one.leading ? -vars : vars);
        into += one.kind == LoadKind::constant_power ? std::conj(s / across)
                                                     : std::conj(s) / (230.0 * 230) * across;
    }
    double conductance = 0;
    for (const EarthPath& path : circuit.paths) conductance += 1 / path.resistance.number();
    RC_ASSERT(std::abs(into - found.terminal * conductance) < 1e-6);
}

RC_GTEST_PROP(LostNeutralLaws, OneLineIsThatOfTheHandFormula, ()) {
    Silent ledger;
    const double watts = support::drawn_between(10, 20000);
    const double earth = support::drawn_between(0.5, 200);
    const double c = support::drawn_between(0.9, 1.1);
    const Volts by_hand =
        terminal_rise(ledger, {"V", ""},
                      FloatingSupply<Silent>{volts(230), c, amperes(watts / 230)}, ohms(earth));
    RC_ASSERT(std::fabs(by_hand.number() -
                        solved(one_line(watts, earth, 230 * c)).magnitude.number()) < 1e-9);
}

}  // namespace
}  // namespace toft::network
