#include "network/terminal_rise.h"

#include "support/working.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>

namespace toft::network {
namespace {

const Name rise_name{"R.limit", "electrode"};

FloatingSupply<Silent> supply(double i, double c = 1.1) { return {volts(230), c, amperes(i)}; }

double electrode(double i, double limit, double c = 1.1) {
    Silent ledger;
    return electrode_for(ledger, rise_name, supply(i, c), volts(limit)).number();
}

double neutral(double a, double b, double c) {
    Silent ledger;
    return neutral_current(ledger, rise_name, amperes(a), amperes(b), amperes(c)).number();
}

/// Own arithmetic of another hand, printed to two or three figures.
TEST(TerminalRise, ElectrodesThatHoldALimitAreThoseOfTheTable) {
    const double loads[] = {2, 5, 10, 16, 20, 32, 40, 60, 80, 100};
    const struct {
        double limit, c, r[10];
    } rows[] = {{70, 1.1, {44.0, 17.6, 8.80, 5.50, 4.40, 2.75, 2.20, 1.47, 1.10, 0.88}},
                {70, 1.0, {50.3, 20.1, 10.1, 6.29, 5.03, 3.14, 2.52, 1.68, 1.26, 1.01}},
                {50, 1.1, {28.3, 11.3, 5.67, 3.54, 2.83, 1.77, 1.42, 0.94, 0.71, 0.57}}};
    for (const auto& row : rows) {
        for (std::size_t i = 0; i < 10; ++i) {
            EXPECT_NEAR(electrode(loads[i], row.limit, row.c) / row.r[i], 1, 0.008)
                << row.limit << " V, " << loads[i] << " A";
        }
    }
}

TEST(TerminalRise, LimitOverLoadCurrentIsAlwaysTheSmallerElectrode) {
    for (double i : {2.0, 32.0, 100.0}) EXPECT_LT(70 / i, electrode(i, 70));
}

TEST(TerminalRise, ASourceThatHasNoMoreThanTheLimitNeedsNoElectrode) {
    EXPECT_TRUE(std::isinf(electrode(10, 260)));
    Recording ledger;
    const FloatingSupply<Recording> given{ledger.stated({"U0", ""}, volts(230), ""),
                                          ledger.stated({"c", ""}, 1.0, ""),
                                          ledger.stated({"I", ""}, amperes(5), "")};
    electrode_for(ledger, rise_name, given, ledger.stated({"V", ""}, volts(230), ""));
    EXPECT_NE(ledger.lines().back().from.find("no more"), std::string::npos);
}

/// The expression was seen in print; the figures are own arithmetic.
TEST(TerminalRise, UnevenLinesLeaveThisForTheNeutral) {
    EXPECT_NEAR(neutral(100, 60, 20), 69.3, 0.05);
    EXPECT_NEAR(neutral(80, 50, 50), 30, 1e-9);
    EXPECT_NEAR(neutral(60, 60, 0), 60, 1e-9);
    EXPECT_NEAR(neutral(33, 33, 33), 0, 1e-9);
}

TEST(TerminalRise, WritesWorkingThatHolds) {
    Recording ledger;
    const FloatingSupply<Recording> given{ledger.stated({"U0", ""}, volts(230), ""),
                                          ledger.stated({"c", ""}, 1.1, ""),
                                          ledger.stated({"I", ""}, amperes(32), "")};
    const auto earth = side_by_side(ledger, {"R.E", ""}, ledger.stated({"R1", ""}, ohms(20), ""),
                                    ledger.stated({"R2", ""}, ohms(5), ""));
    EXPECT_NEAR(earth.value.number(), 4, 1e-12);
    terminal_rise(ledger, {"V.E", ""}, given, earth);
    electrode_for(ledger, rise_name, given, ledger.stated({"V.lim", ""}, volts(70), ""));
    EXPECT_EQ(ledger.lines().back().formula, "V.lim × U0 / (I × (U.source − V.lim))");
    const auto i = [&](const char* symbol, double a) {
        return ledger.stated({symbol, ""}, amperes(a), "");
    };
    neutral_current(ledger, {"I.N", ""}, i("I1", 100), i("I2", 60), i("I3", 20));
    for (const std::string& wrong : support::wrong_lines(ledger.lines())) ADD_FAILURE() << wrong;
}

RC_GTEST_PROP(TerminalRise, TheElectrodeForALimitLiftsTheTerminalToJustThatLimit, ()) {
    Silent ledger;
    const double i = *rc::gen::inRange(1, 200);
    const double limit = *rc::gen::inRange(10, 200);
    const auto r = electrode_for(ledger, rise_name, supply(i), volts(limit));
    RC_ASSERT(std::fabs(terminal_rise(ledger, rise_name, supply(i), r).number() - limit) < 1e-9);
    RC_ASSERT(terminal_rise(ledger, rise_name, supply(i * 1.1), r) > volts(limit));
    RC_ASSERT(electrode(i, limit - 1) < r.number());
}

}  // namespace
}  // namespace toft::network
