#include "network/loop.h"

#include "support/working.h"

#include <gtest/gtest.h>

namespace toft::network {
namespace {

const Name loop_name{"Z", "loop"};
const Impedance three_four{ohms(3), ohms(4)};

TEST(Loop, TheLargestIsTheSumOfTheMagnitudes) {
    Silent ledger;
    EXPECT_EQ(largest_loop(ledger, loop_name, ohms(2), three_four), ohms(7));
}

TEST(Loop, TheSmallestHasTheTwoAtRightAngles) {
    Silent ledger;
    EXPECT_EQ(smallest_loop(ledger, loop_name, ohms(12), three_four), ohms(13));
}

TEST(Loop, WithoutASourceBothAreThePath) {
    Silent ledger;
    EXPECT_EQ(largest_loop(ledger, loop_name, ohms(0), three_four), ohms(5));
    EXPECT_EQ(smallest_loop(ledger, loop_name, ohms(0), three_four), ohms(5));
}

TEST(Loop, DrivesTheVoltageOverItselfTimesTheVoltageFactor) {
    Silent ledger;
    EXPECT_NEAR(fault_current(ledger, loop_name, 0.95, volts(230), ohms(1.15)).number(), 190,
                1e-12);
}

TEST(Loop, WritesWorkingThatHolds) {
    Recording ledger;
    const auto ze = ledger.stated({"Ze", ""}, ohms(0.35), "measured");
    const ImpedanceIn<Recording> path{ledger.stated({"R", ""}, ohms(0.2), ""),
                                      ledger.stated({"X", ""}, ohms(0.01), "")};
    const auto most = largest_loop(ledger, {"Zs", ""}, ze, path);
    smallest_loop(ledger, {"Zs.least", ""}, ze, path);
    fault_current(ledger, {"I", ""}, ledger.stated({"c", ""}, 0.95, ""),
                  ledger.stated({"U0", ""}, volts(230), ""), most);
    EXPECT_EQ(ledger.lines()[3].formula, "Ze + √(R² + X²)");
    EXPECT_EQ(ledger.lines()[4].formula, "√(Ze² + R² + X²)");
    EXPECT_EQ(ledger.lines().back().formula, "c × U0 / Zs");
    for (const std::string& wrong : support::wrong_lines(ledger.lines())) ADD_FAILURE() << wrong;
}

}  // namespace
}  // namespace toft::network
