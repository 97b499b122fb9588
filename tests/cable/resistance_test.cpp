#include "cable/resistance.h"

#include "support/catalogue.h"
#include "support/working.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace toft::cable {
namespace {

const Name rise_name{"rise", "growth of resistance"};
const Name r_name{"r", "resistance"};

double rise_at(double degrees, double alpha = 0.00393) {
    Silent ledger;
    return resistance_rise(ledger, rise_name, per_kelvin(alpha), celsius(degrees));
}

TEST(Resistance, IsTheTabulatedOneAtTwentyDegrees) {
    Silent ledger;
    const OhmsPerMetre r20 = milliohms_per_metre(1.83);
    EXPECT_EQ(rise_at(20), 1.0);
    EXPECT_EQ(resistance_at(ledger, r_name, r20, rise_at(20)), r20);
}

TEST(Resistance, GrowsByAFifthFromTwentyToSeventyDegrees) {
    EXPECT_NEAR(rise_at(70), 1.1965, 1e-12);
}

TEST(Resistance, FallsBelowTwentyDegrees) { EXPECT_LT(rise_at(0), 1.0); }

RC_GTEST_PROP(Resistance, AWarmerConductorNeverHasLess, ()) {
    const double colder = *rc::gen::inRange(-50, 300);
    const double warmer = colder + *rc::gen::inRange(0, 100);
    for (const auto* metal : {&support::catalogue().cable_constants.copper,
                              &support::catalogue().cable_constants.aluminium,
                              &support::catalogue().cable_constants.steel}) {
        const double alpha = metal->alpha20.value.number();
        RC_ASSERT(rise_at(warmer, alpha) >= rise_at(colder, alpha));
        RC_ASSERT(rise_at(colder, alpha) > 0);
    }
}

TEST(Resistance, WritesWorkingThatHolds) {
    Recording ledger;
    const auto& copper = support::catalogue().cable_constants.copper;
    const auto alpha = ledger.table({"alpha", "coefficient"}, copper.alpha20);
    const auto t = ledger.stated({"t", "temperature"}, celsius(90), "survey");
    const auto rise = resistance_rise(ledger, rise_name, alpha, t);
    const auto r20 = ledger.table({"r20", "resistance"}, support::conductor(10).r20);
    resistance_at(ledger, r_name, r20, rise);
    ASSERT_EQ(ledger.lines().size(), 5u);
    EXPECT_EQ(ledger.lines()[2].formula, "1 + alpha × (t − 20)");
    EXPECT_EQ(ledger.lines()[4].formula, "r20 × rise");
    for (const std::string& wrong : support::wrong_lines(ledger.lines())) ADD_FAILURE() << wrong;
}

}  // namespace
}  // namespace toft::cable
