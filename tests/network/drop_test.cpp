#include "network/drop.h"

#include "support/draws.h"
#include "support/working.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>

namespace toft::network {
namespace {

double drop(double current, double power_factor, double r, double x, double u0 = 230) {
    Silent ledger;
    return line_drop(ledger, volts(u0), Loading<Silent>{amperes(current), power_factor, 0},
                     Impedance{ohms(r), ohms(x)})
        .number();
}

TEST(LineDrop, OfAPureResistanceIsCurrentTimesResistance) {
    EXPECT_NEAR(drop(20, 1, 0.3, 0), 6, 1e-12);
}

TEST(LineDrop, IsTheTradesSumForShortLines) {
    const double sum = 20 * (0.3 * 0.9 + 0.05 * std::sqrt(1 - 0.81));
    EXPECT_NEAR(drop(20, 0.9, 0.3, 0.05), sum, 0.01);
    EXPECT_GE(drop(20, 0.9, 0.3, 0.05), sum);
}

TEST(LineDrop, NoCurrentDropsNothing) { EXPECT_EQ(drop(0, 0.8, 0.3, 0.05), 0); }

TEST(LineDrop, ALineThatCannotCarryTheLoadLosesTheWholeVoltage) {
    EXPECT_EQ(drop(1000, 1, 1, 0), 230);
    EXPECT_EQ(drop(1000, 0.5, 0.1, 3), 230);
}

RC_GTEST_PROP(LineDrop, WritesWorkingThatHolds, ()) {
    Recording ledger;
    using support::number_between;
    const auto u0 = ledger.stated({"U0", ""}, volts(number_between(100, 250)), "survey");
    const auto i = ledger.stated({"Ib", ""}, amperes(number_between(0, 100)), "survey");
    const auto pf = ledger.stated({"cos.phi", ""}, number_between(0.01, 1), "survey");
    const ImpedanceIn<Recording> line{
        ledger.stated({"R", ""}, ohms(number_between(0, 2)), "survey"),
        ledger.stated({"X", ""}, ohms(number_between(0, 2)), "survey")};
    const auto recorded = line_drop(ledger, u0, Loading<Recording>{i, pf, 0}, line);
    Silent silent;
    RC_ASSERT(recorded.value == line_drop(silent, u0.value, Loading<Silent>{i.value, pf.value, 0},
                                          Impedance{line.r.value, line.x.value}));
    for (const std::string& wrong : support::wrong_lines(ledger.lines())) RC_FAIL(wrong);
}

}  // namespace
}  // namespace toft::network
