#include "network/source_rise.h"

#include "support/spice.h"

#include <gtest/gtest.h>

#include <cmath>

namespace toft::network {
namespace {

double rise(double current, double r, double x) {
    Silent silent;
    return source_rise(silent, {"rise", ""}, volts(230), amperes(current), {ohms(r), ohms(x)})
        .number();
}

// The trade multiplies mV/A/m: 16 A back through 26 m of 12 mV/A/m adds 5 V, and of 4.7 2 V.
TEST(SourceRise, WithoutReactanceItIsCurrentTimesResistance) {
    EXPECT_NEAR(rise(16, 0.012 * 26, 0), 16 * 0.012 * 26, 1e-9);
    EXPECT_NEAR(rise(16, 0.0047 * 26, 0), 1.955, 1e-3);
}

TEST(SourceRise, NgspiceAgrees) {
    support::Circuit circuit;
    const double cases[][3] = {{16, 0.3, 0}, {16, 0.3, 0.08}, {32, 0.12, 0.3}, {3, 1.2, 0.01}};
    int i = 0;
    for (const auto& c : cases) {
        // A second source of the voltage that we say stands there drives the stated current back.
        const std::string n = std::to_string(i++);
        const double along = 230 + c[0] * c[1];
        const double across = c[0] * c[2];
        const double angle = std::atan2(across, along) * 180 / std::acos(-1.0);
        circuit.source("grid" + n, "g" + n, volts(230));
        circuit.source("sun" + n, "p" + n, volts(230 + rise(c[0], c[1], c[2])), angle);
        circuit.impedance("p" + n, "g" + n, {ohms(c[1]), ohms(c[2])});
        circuit.ask_current("i" + n, "sun" + n);
    }
    const auto answers = circuit.solve();
    i = 0;
    for (const auto& c : cases) EXPECT_NEAR(answers.at("i" + std::to_string(i++)) / c[0], 1, 1e-6);
}

}  // namespace
}  // namespace toft::network
