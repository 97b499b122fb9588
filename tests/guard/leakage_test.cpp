#include "guard/leakage.h"

#include "guard/guarding.h"

namespace toft::guard {
namespace {

using site::CircuitKind;

site::Circuit leaking(double low_ma, double high_ma) {
    site::Circuit c = circuit(CircuitKind::fixed_load);
    c.leakage = support::between(milliamperes(low_ma), milliamperes(high_ma));
    return c;
}

// BS 7671 531.3.2 as remembered: 9 mA behind 30 mA, 30 mA behind 100 mA.
TEST(Leakage, ThirtyPerCentOfTheRatingMayLeak) {
    const site::Job job = job_with({});
    EXPECT_NEAR(leakage_allowed(view(job), milliamperes(30)).number(), 0.009, 1e-12);
    EXPECT_NEAR(leakage_allowed(view(job), milliamperes(100)).number(), 0.030, 1e-12);
}

TEST(Leakage, WhatIsStatedGoesBeforeWhatIsUsual) {
    const site::Job job = job_with({leaking(2, 2)});
    EXPECT_TRUE(leakage_of_all(view(job)).stated);
    EXPECT_NEAR(leakage_of_all(view(job)).high.number(), 0.002, 1e-12);
}

TEST(Leakage, AddsUpAndIsStatedOnlyIfAllOfItIs) {
    const site::Job job = job_with({leaking(2, 3), circuit(CircuitKind::freezer)});
    const Leakage sum = leakage_of_all(view(job));
    EXPECT_FALSE(sum.stated);
    EXPECT_GT(sum.low, milliamperes(2));
    EXPECT_GT(sum.high, milliamperes(3));
    EXPECT_LE(sum.low, sum.high);
}

Budget behind_thirty(double low_ma, double high_ma) {
    const site::Job job = job_with({leaking(low_ma, high_ma)});
    return budget_of(view(job), leakage_of_all(view(job)), milliamperes(30));
}

TEST(Leakage, ABudgetIsKeptMayBeExceededOrIs) {
    EXPECT_EQ(behind_thirty(1, 9), Budget::kept);  // a tie
    EXPECT_EQ(behind_thirty(1, 9.1), Budget::may_exceed);
    EXPECT_EQ(behind_thirty(9.1, 12), Budget::exceeds);
}

TEST(Leakage, EveryKindHasAUsualRange) {
    for (std::size_t k = 0; k < site::words<CircuitKind>().size(); ++k) {
        const site::Circuit c = circuit(static_cast<CircuitKind>(k));
        const site::Job job = job_with({c});
        const Leakage usual = leakage_of(view(job), c);
        EXPECT_GT(usual.high, amperes(0));
        EXPECT_LE(usual.low, usual.high);
        EXPECT_FALSE(usual.stated);
    }
}

TEST(Leakage, TheWorstCircuitDecides) {
    const site::Job job = job_with({leaking(1, 1), leaking(10, 12), leaking(1, 2)});
    EXPECT_EQ(worst_circuit(view(job)), Budget::exceeds);
    const site::Job mild = job_with({leaking(1, 2)});
    EXPECT_EQ(worst_circuit(view(mild)), Budget::kept);
}

}  // namespace
}  // namespace toft::guard
