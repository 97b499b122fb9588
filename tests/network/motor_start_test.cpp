#include "network/motor_start.h"

#include "support/spice.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>

namespace toft::network {
namespace {

double dip(double starting_a, double ohm) {
    Silent silent;
    return starting_dip(silent, {"dip", ""}, volts(230), amperes(starting_a), ohms(ohm));
}

// A motor that would take 60 A from a stiff supply is 3.833 Ω at rest. Behind half an ohm of the
// same angle it gets 3.833/4.333 of the voltage.
TEST(MotorStart, TheMotorAtRestIsAnImpedanceAndSharesTheVoltageWithWhatIsBeforeIt) {
    EXPECT_NEAR(dip(60, 0.5), 100 * 0.5 / (0.5 + 230.0 / 60), 1e-9);
    EXPECT_NEAR(dip(60, 1e-12), 0, 1e-6);
    EXPECT_LT(dip(1e6, 10), 100);
}

TEST(MotorStart, TorqueGoesWithTheSquareOfTheVoltage) {
    Silent silent;
    EXPECT_NEAR(torque_left(silent, {"T", ""}, 10.0), 0.81, 1e-12);
    EXPECT_NEAR(torque_left(silent, {"T", ""}, 30.0), 0.49, 1e-12);
}

// ngspice divides the voltage with phasors; ours is the worst of all angles, and exact where the
// two angles are one.
TEST(MotorStart, NgspiceFindsNoDeeperDipAtAnyAngleAndTheSameAtEqualAngles) {
    support::Circuit circuit;
    const double before[] = {0, 20, 45, 70, 89};
    int i = 0;
    std::vector<std::pair<std::string, bool>> asked;
    const auto at = [](double size, double degrees) {
        const double angle = degrees * std::acos(-1.0) / 180;
        return Impedance{ohms(size * std::cos(angle)), ohms(size * std::sin(angle))};
    };
    for (const double a : before) {
        for (const double m : before) {
            const std::string n = std::to_string(i++);
            circuit.source("s" + n, "a" + n, volts(230));
            circuit.impedance("a" + n, "b" + n, at(0.8, a));
            circuit.impedance("b" + n, "0", at(230.0 / 50, m));
            circuit.ask_voltage("u" + n, "b" + n);
            asked.emplace_back("u" + n, a == m);
        }
    }
    const auto answers = circuit.solve();
    const double ours = dip(50, 0.8);
    for (const auto& [name, equal] : asked) {
        const double theirs = 100 * (1 - answers.at(name) / 230);
        EXPECT_LE(theirs, ours + 1e-4) << name;
        if (!equal) continue;
        EXPECT_NEAR(theirs, ours, 1e-4) << name;
    }
}

RC_GTEST_PROP(MotorStart, AHeavierMotorOrALongerWayNeverDipsLess, ()) {
    const double i = *rc::gen::inRange(1, 500);
    const double z = *rc::gen::inRange(1, 3000) / 1000.0;
    RC_ASSERT(dip(i + 5, z) >= dip(i, z));
    RC_ASSERT(dip(i, z + 0.1) >= dip(i, z));
}

}  // namespace
}  // namespace toft::network
