#include "demand/circuit.h"

#include "demand/circuits.h"

#include <gtest/gtest.h>

#include <cmath>

namespace toft::demand {
namespace {

using site::CircuitKind;
using support::measured;

TEST(Circuit, WattsComeBeforeTheDeviceAndTheDeviceBeforeTheUsualRating) {
    site::Circuit sockets = circuit(CircuitKind::socket_ring);
    EXPECT_EQ(load_of(sockets).full, amperes(32));
    sockets.device = site::NamedDevice{"BS EN 60898", "B", amperes(20)};
    EXPECT_EQ(load_of(sockets).full, amperes(20));
    sockets.load_w = measured(1150.0);
    EXPECT_DOUBLE_EQ(load_of(sockets).full.number(), 5);
    sockets.power_factor = measured(0.5);
    EXPECT_DOUBLE_EQ(load_of(sockets).full.number(), 10);
}

TEST(Circuit, EachKindHasTheRatingItsCircuitsUsuallyHave) {
    EXPECT_EQ(load_of(circuit(CircuitKind::socket_radial)).full, amperes(20));
    EXPECT_EQ(load_of(circuit(CircuitKind::lighting)).full, amperes(6));
    EXPECT_EQ(load_of(circuit(CircuitKind::vehicle_charging)).full, amperes(32));
    EXPECT_EQ(current_from(support::catalogue().demand, circuit(CircuitKind::motor)),
              CurrentFrom::nothing);
}

TEST(Circuit, ThreePhasesShareTheWatts) {
    site::Circuit lathe = circuit(CircuitKind::motor);
    lathe.phases = 3;
    lathe.load_w = measured(6900.0);
    EXPECT_DOUBLE_EQ(load_of(lathe).full.number(), 10);
}

TEST(Circuit, AWelderHeatsTheCableByTheRootOfItsDuty) {
    site::Circuit welder = drawing(CircuitKind::welder, 26);
    EXPECT_EQ(load_of(welder).lasting, load_of(welder).full);
    welder.duty_percent = measured(36.0);
    EXPECT_DOUBLE_EQ(load_of(welder).full.number(), 26);
    EXPECT_DOUBLE_EQ(load_of(welder).lasting.number(), 26 * 0.6);
    site::Circuit kiln = drawing(CircuitKind::kiln, 26);
    kiln.duty_percent = measured(36.0);
    EXPECT_EQ(load_of(kiln).lasting, load_of(kiln).full);
}

TEST(Circuit, SolarDrawsNothingAndABatteryItsStatedChargingLoad) {
    site::Circuit solar = drawing(CircuitKind::solar, 16);
    solar.device = site::NamedDevice{"BS EN 60898", "B", amperes(20)};
    EXPECT_EQ(load_of(solar).full, amperes(0));
    site::Circuit battery = circuit(CircuitKind::battery);
    battery.device = solar.device;
    EXPECT_EQ(load_of(battery).full, amperes(0));
    EXPECT_DOUBLE_EQ(load_of(drawing(CircuitKind::battery, 11)).full.number(), 11);
}

TEST(Circuit, ThirdHarmonicsAreAShareOfItsCurrent) {
    site::Circuit lamps = drawing(CircuitKind::lighting, 10);
    EXPECT_EQ(load_of(lamps).third, amperes(0));
    lamps.third_harmonic = measured(30.0);
    EXPECT_DOUBLE_EQ(load_of(lamps).third.number(), 3);
}

}  // namespace
}  // namespace toft::demand
