#include "shock/electrode_heat.h"

#include "support/catalogue.h"
#include "support/working.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>

namespace toft::shock {
namespace {

const tables::ElectrodeHeat& heat() { return support::catalogue().shock.heat; }

WarmGround<Silent> ground(double rho, double lambda = 1) {
    return {ohm_metres(rho), tables::SoilConductivity(lambda)};
}

SteadyRise<Silent> rise(double rho, double v) {
    Silent ledger;
    return steady_rise(ledger, {"theta", ""}, heat(), ground(rho), volts(v));
}

ShortCurrent<Silent> in_short(double rho, double time) {
    Silent ledger;
    return short_current(ledger, {"I", ""}, heat(),
                         HotRod<Silent>{ohm_metres(rho), metres(1.2), metres(0.016)},
                         seconds(time));
}

/// Own arithmetic of another hand.
TEST(ElectrodeHeat, LastingRiseIsThatOfTheExamples) {
    EXPECT_NEAR(rise(100, 70).rise.number(), 24.5, 0.5);
    EXPECT_NEAR(rise(100, 110).rise.number(), 60.5, 0.5);
    EXPECT_NEAR(rise(100, 150).rise.number(), 112.5, 0.5);
    EXPECT_NEAR(rise(20, 70).rise.number(), 122.5, 0.5);
    EXPECT_NEAR(rise(100, 230).rise.number(), 264.5, 0.5);
}

TEST(ElectrodeHeat, ClayDriesAtAVoltageThatSandBears) {
    EXPECT_EQ(rise(100, 70).heating, Heating::holds);
    EXPECT_EQ(rise(20, 70).heating, Heating::dries);
    Silent ledger;
    EXPECT_NEAR(drying_voltage(ledger, {"V", ""}, heat(), ground(20)).number(), 48.99, 0.01);
    EXPECT_NEAR(drying_voltage(ledger, {"V", ""}, heat(), ground(100)).number(), 109.54, 0.01);
}

/// A sphere of radius a that gives off V²/R into endless ground has R = rho/(4 pi a) for current
/// and 1/(4 pi lambda a) for heat; half the loss is made within the ground near by, so the rise is
/// half of what a heater inside would cause. Solved here by shells instead.
TEST(ElectrodeHeat, AgreesWithASphereSolvedInShells) {
    const double a = 0.1, rho = 60, lambda = 1.1, v = 80;
    const double current = v / (rho / (4 * 3.14159265358979 * a));
    double inside = 0;  // watts made between the metal and r
    double theta = 0;   // rise of the metal over r
    double r = a;
    const double growth = 1.0005;
    while (r < a * 1e5) {
        const double outer = r * growth;
        const double shell = (1 / r - 1 / outer) / (4 * 3.14159265358979);
        const double made = current * current * rho * shell;
        theta += (inside + made / 2) * shell / lambda;
        inside += made;
        r = outer;
    }
    Silent ledger;
    const auto found = steady_rise(ledger, {"theta", ""}, heat(), ground(rho, lambda), volts(v));
    EXPECT_NEAR(found.rise.number() / theta, 1, 1e-3);
}

TEST(ElectrodeHeat, ShortCurrentOfARodIsThatOfTheExample) {
    const auto found = in_short(100, 1);
    EXPECT_NEAR(found.density.number(), 760, 1e-9);
    EXPECT_NEAR(found.current.number(), 46, 0.5);
    EXPECT_EQ(found.law, ShortTime::holds);
    EXPECT_EQ(in_short(100, 5).law, ShortTime::holds);
    EXPECT_EQ(in_short(100, 5.1).law, ShortTime::too_long);
}

TEST(ElectrodeHeat, WritesWorkingThatHolds) {
    Recording ledger;
    const WarmGround<Recording> warm{
        ledger.stated({"rho", ""}, ohm_metres(80), "survey"),
        ledger.table({"lambda", "conductivity of the ground"}, heat().conductivity_low)};
    steady_rise(ledger, {"theta", ""}, heat(), warm, ledger.stated({"V", ""}, volts(70), ""));
    drying_voltage(ledger, {"V.dry", ""}, heat(), warm);
    const HotRod<Recording> rod{warm.resistivity, ledger.stated({"L", ""}, metres(1.2), ""),
                                ledger.stated({"d", ""}, metres(0.016), "")};
    short_current(ledger, {"I.short", ""}, heat(), rod, ledger.stated({"t", ""}, seconds(1), ""));
    for (const std::string& wrong : support::wrong_lines(ledger.lines())) ADD_FAILURE() << wrong;
}

RC_GTEST_PROP(ElectrodeHeatLaws, TheDryingVoltageIsWhereTheLawEnds, ()) {
    Silent ledger;
    const double rho = *rc::gen::inRange(1, 2000);
    const double lambda = *rc::gen::inRange(3, 20) / 10.0;
    const auto v = drying_voltage(ledger, {"V", ""}, heat(), ground(rho, lambda));
    const auto at = [&](double share) {
        return steady_rise(ledger, {"t", ""}, heat(), ground(rho, lambda), share * v).heating;
    };
    RC_ASSERT(at(0.999) == Heating::holds);
    RC_ASSERT(at(1.001) == Heating::dries);
    RC_ASSERT(drying_voltage(ledger, {"V", ""}, heat(), ground(rho * 2, lambda)) > v);
}

RC_GTEST_PROP(ElectrodeHeatLaws, LongerNeverBearsMoreCurrent, ()) {
    const double rho = *rc::gen::inRange(1, 2000);
    const double time = *rc::gen::inRange(1, 100) / 10.0;
    RC_ASSERT(in_short(rho, time * 1.1).current < in_short(rho, time).current);
    RC_ASSERT(in_short(rho * 1.1, time).current < in_short(rho, time).current);
}

}  // namespace
}  // namespace toft::shock
