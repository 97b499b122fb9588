#include "network/touch_voltage.h"

#include "network/loop.h"
#include "support/working.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace toft::network {
namespace {

const Name touch_name{"Ut", "touch voltage"};
const Impedance protective_path{ohms(0.3), ohms(0.4)};

TEST(TouchVoltage, OfAnEarthCarriedOutIsTheDropAlongTheProtectivePath) {
    Silent ledger;
    EXPECT_NEAR(carried_touch(ledger, touch_name, amperes(200), protective_path).number(), 100,
                1e-12);
}

TEST(TouchVoltage, BetweenEqualCoresIsHalfOfWhatReachesTheRun) {
    // A fault at the end of a line and a protective core of one section, no source impedance.
    Silent ledger;
    const Impedance both{protective_path.r * 2.0, protective_path.x * 2.0};
    const auto fault = fault_current(ledger, touch_name, 1.0, volts(230),
                                     largest_loop(ledger, touch_name, ohms(0), both));
    EXPECT_NEAR(carried_touch(ledger, touch_name, fault, protective_path).number(), 115, 1e-9);
}

TEST(TouchVoltage, RiseOfTheNeutralIsSharedBetweenBothEnds) {
    Silent ledger;
    const auto rise = [&](double house, double source) {
        return neutral_rise(ledger, touch_name, amperes(60), protective_path,
                            GroundedEnds<Silent>{ohms(house), ohms(source)})
            .number();
    };
    EXPECT_NEAR(rise(20, 0), 30, 1e-12);
    EXPECT_NEAR(rise(20, 20), 15, 1e-12);
    EXPECT_NEAR(rise(1e9, 20), 30, 1e-6);
}

TEST(TouchVoltage, OfAnOwnElectrodeIsNearlyAllOfTheVoltageThere) {
    Silent ledger;
    const auto fault = fault_current(ledger, touch_name, 1.0, volts(230), ohms(200 + 20.5));
    EXPECT_NEAR(own_electrode_touch(ledger, touch_name, fault, ohms(200)).number(), 208.6, 0.05);
    EXPECT_NEAR(own_electrode_touch(ledger, touch_name, milliamperes(30), ohms(200)).number(), 6,
                1e-12);
}

TEST(TouchVoltage, WritesWorkingThatHolds) {
    Recording ledger;
    const ImpedanceIn<Recording> path{ledger.stated({"R2", ""}, ohms(0.2), ""),
                                      ledger.stated({"X2", ""}, ohms(0.01), "")};
    const auto fault = ledger.stated({"If", ""}, amperes(300), "");
    const auto run = carried_touch(ledger, {"Ut.run", ""}, fault, path);
    const GroundedEnds<Recording> ends{ledger.stated({"RE", ""}, ohms(20), ""),
                                       ledger.stated({"RB", ""}, ohms(5), "")};
    const auto house = neutral_rise(ledger, {"Ut.house", ""}, fault, path, ends);
    carried_touch_to_ground(ledger, {"Ut.ground", ""}, run, house);
    own_electrode_touch(ledger, {"Ut.own", ""}, fault, ends.house);
    for (const std::string& wrong : support::wrong_lines(ledger.lines())) ADD_FAILURE() << wrong;
}

RC_GTEST_PROP(TouchVoltage, ThickerProtectiveConductorNeverRaisesIt, ()) {
    // A lower protective impedance draws more current, yet less of the voltage stands over it.
    Silent ledger;
    const auto touch = [&](double protective) {
        const auto loop =
            largest_loop(ledger, touch_name, ohms(0.35), {ohms(0.1 + protective), ohms(0)});
        return carried_touch(ledger, touch_name,
                             fault_current(ledger, touch_name, 0.95, volts(230), loop),
                             {ohms(protective), ohms(0)});
    };
    const double r = *rc::gen::inRange(1, 500) / 100.0;
    RC_ASSERT(touch(r) < touch(r * 1.1));
    RC_ASSERT(touch(r) < volts(230));
}

}  // namespace
}  // namespace toft::network
