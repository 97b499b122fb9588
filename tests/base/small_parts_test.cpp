// Parts of base too small for a file of their own: ties with a limit, roots, faults, impedances.

#include "base/impedance.h"
#include "base/limit.h"
#include "base/outcome.h"
#include "base/root.h"
#include "support/working.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace toft {
namespace {

TEST(Limit, IsMetAtTheLimitAndAHairBeyond) {
    EXPECT_TRUE(within(5, 5));
    EXPECT_TRUE(within(5 * (1 + 1e-10), 5));
    EXPECT_FALSE(within(5 * (1 + 1e-8), 5));
    EXPECT_TRUE(within(4.9, 5));
    EXPECT_FALSE(within(1e-12, 0));
}

TEST(Root, FindsTheLastPlaceWhereAConditionHolds) {
    const double found = last_holding(0, 100, [](double x) { return x * x <= 2; });
    EXPECT_NEAR(found, 1.41421356, 1e-8);
    EXPECT_LE(found * found, 2);
    EXPECT_EQ(last_holding(0, 1, [](double) { return true; }), 1);
    EXPECT_EQ(last_holding(3, 9, [](double x) { return x <= 3; }), 3);
}

TEST(Outcome, HoldsAResultOrAllThatIsWrong) {
    const Outcome<int> good = 3;
    EXPECT_EQ(*good, 3);
    const Outcome<int> bad = failed(Fault{"data", "/x", "no good", "", {}});
    ASSERT_FALSE(bad);
    EXPECT_EQ(bad.error().size(), 1u);
    const Outcome<int> worse = failed(Faults{{"a", "", "", "", {}}, {"b", "", "", "", {}}});
    EXPECT_EQ(worse.error()[1].code, "b");
}

RC_GTEST_PROP(Impedance, ParallelAndMagnitudeWriteWorkingThatHolds, ()) {
    Recording ledger;
    const auto stated = [&](const char* symbol) {
        return ledger.stated({symbol, ""}, ohms(*rc::gen::inRange(1, 5000) / 1000.0), "survey");
    };
    const ImpedanceIn<Recording> core{stated("R.core"), stated("X.core")};
    const ImpedanceIn<Recording> armour{stated("R.arm"), stated("X.arm")};
    auto both = parallel(ledger, {{"Z2", ""}, {"R.path", ""}, {"X.path", ""}}, core, armour);
    both = both + core;
    ledger.let({"Z", ""}, magnitude(both));
    for (const std::string& wrong : support::wrong_lines(ledger.lines())) RC_FAIL(wrong);
}

}  // namespace
}  // namespace toft
