// Laws of the parts that a study is made of: devices, impedances, loops.

#include "base/limit.h"
#include "device/curve.h"
#include "network/drop.h"
#include "network/loop.h"
#include "support/catalogue.h"
#include "support/draws.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>
#include <complex>

namespace toft {
namespace {

using support::number_between;

const Name unnamed{"x", ""};
const ParallelNames unnamed_parallel{unnamed, unnamed, unnamed};

Impedance any_impedance() { return {ohms(number_between(1e-4, 5)), ohms(number_between(0, 5))}; }

Impedance any_resistance() { return {ohms(number_between(1e-4, 5)), ohms(0)}; }

std::complex<double> phasor(const Impedance& z) { return {z.r.number(), z.x.number()}; }

const tables::Device& any_device() {
    const auto& devices = support::catalogue().devices;
    return devices[*rc::gen::inRange<std::size_t>(0, devices.size())];
}

RC_GTEST_PROP(DeviceLaws, ALargerFuseNeverHasASmallerOperatingCurrent, ()) {
    Silent ledger;
    const double time = number_between(0.4, 5);
    Amperes before;
    for (double rating : {5.0, 16.0, 20.0, 32.0, 45.0, 63.0, 80.0, 100.0}) {
        const Amperes now =
            device::operating_current(ledger, unnamed, support::fuse(rating), seconds(time));
        RC_ASSERT(now >= before);
        before = now;
    }
}

RC_GTEST_PROP(DeviceLaws, ALargerFuseNeverOperatesSooner, ()) {
    Silent ledger;
    const Amperes current = amperes(std::pow(10, number_between(0.5, 3.3)));
    Seconds before;
    for (double rating : {16.0, 20.0, 32.0, 63.0, 80.0, 100.0}) {
        const Seconds now = device::operating_time(ledger, unnamed, support::fuse(rating), current);
        RC_ASSERT(now >= before);
        before = now;
    }
}

RC_GTEST_PROP(DeviceLaws, LessTimeNeverAsksForLessCurrent, ()) {
    Silent ledger;
    const tables::Device& device = any_device();
    const double time = number_between(0.1, 5);
    const double shorter = number_between(0.1, time);
    RC_ASSERT(device::operating_current(ledger, unnamed, device, seconds(shorter)) >=
              device::operating_current(ledger, unnamed, device, seconds(time)));
}

RC_GTEST_PROP(DeviceLaws, LetThroughIsFiniteExactlyWhereTheDeviceOperates, ()) {
    Silent ledger;
    const tables::Device& device = any_device();
    const Amperes current = amperes(std::pow(10, number_between(0, 4.3)));
    const bool operates =
        std::isfinite(device::operating_time(ledger, unnamed, device, current).number());
    const bool bounded =
        std::isfinite(device::let_through(ledger, unnamed, device, current).number());
    RC_ASSERT(operates == bounded);
}

RC_GTEST_PROP(DeviceLaws, LetThroughNeverExceedsTheCurrentForItsWholeTime, ()) {
    Silent ledger;
    const tables::Device& device = any_device();
    const Amperes current =
        device.points.front().current.value * std::pow(10, number_between(0, 2.5));
    const Seconds time = device::operating_time(ledger, unnamed, device, current);
    RC_ASSERT(std::isfinite(time.number()));
    const auto energy = device::let_through(ledger, unnamed, device, current);
    RC_ASSERT(energy.number() <= (squared(current) * time).number() * (1 + 1e-9));
}

RC_GTEST_PROP(ImpedanceLaws, TwoResistancesSideBySideAreLessThanEither, ()) {
    Silent ledger;
    const Impedance a = any_resistance();
    const Impedance b = any_resistance();
    const Impedance both = parallel(ledger, unnamed_parallel, a, b);
    RC_ASSERT(both.r <= a.r);
    RC_ASSERT(both.r <= b.r);
    RC_ASSERT(both.x == ohms(0));
}

RC_GTEST_PROP(ImpedanceLaws, ParallelIsTheComplexProductOverTheSum, ()) {
    Silent ledger;
    const Impedance a = any_impedance();
    const Impedance b = any_impedance();
    const std::complex<double> expected = phasor(a) * phasor(b) / (phasor(a) + phasor(b));
    const std::complex<double> ours = phasor(parallel(ledger, unnamed_parallel, a, b));
    RC_ASSERT(std::abs(ours - expected) <= 1e-12 * (1 + std::abs(expected)));
}

RC_GTEST_PROP(ImpedanceLaws, ALoopLiesBetweenItsBoundsWhateverTheAngleOfItsSource, ()) {
    Silent ledger;
    const double source = number_between(0, 2);
    const double angle = number_between(0, std::acos(0.0));
    const Impedance path = any_impedance();
    const double true_loop = std::abs(std::polar(source, angle) + phasor(path));
    RC_ASSERT(
        within(true_loop, network::largest_loop(ledger, unnamed, ohms(source), path).number()));
    RC_ASSERT(
        within(network::smallest_loop(ledger, unnamed, ohms(source), path).number(), true_loop));
}

RC_GTEST_PROP(ImpedanceLaws, TheDropIsThatOfThePhasorDiagram, ()) {
    Silent ledger;
    const double u0 = 230;
    const double current = number_between(0.1, 20);
    const double power_factor = number_between(0.1, 1);
    const Impedance line{ohms(number_between(1e-4, 2)), ohms(number_between(0, 1))};
    const double drop =
        network::line_drop(ledger, volts(u0),
                           network::Loading<Silent>{amperes(current), power_factor, 0}, line)
            .number();
    // Build the sending voltage from the voltage left and the lagging current.
    const std::complex<double> i = std::polar(current, -std::acos(power_factor));
    const std::complex<double> sending = (u0 - drop) + i * phasor(line);
    RC_ASSERT(std::fabs(std::abs(sending) - u0) <= 1e-9 * u0);
}

}  // namespace
}  // namespace toft
