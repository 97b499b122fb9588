#include "tolerance/quantile.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace toft::tolerance {
namespace {

using site::Spread;

TEST(Quantile, TheNormalDistributionIsThatOfTheTables) {
    // Any table of the normal distribution (memory): 0.8413 below one deviation, 0.97725 below two,
    // 0.975 below 1.95996.
    EXPECT_NEAR(normal_share(0), 0.5, 1e-12);
    EXPECT_NEAR(normal_share(1), 0.8413447, 1e-7);
    EXPECT_NEAR(normal_share(2), 0.9772499, 1e-7);
    EXPECT_NEAR(normal_share(1.959964), 0.975, 1e-7);
}

TEST(Quantile, EvenIsAStraightLine) {
    EXPECT_DOUBLE_EQ(quantile(Spread::even, 20, 40, 0), 20);
    EXPECT_DOUBLE_EQ(quantile(Spread::even, 20, 40, 0.25), 25);
    EXPECT_DOUBLE_EQ(quantile(Spread::even, 20, 40, 1), 40);
}

TEST(Quantile, ABellKeepsItsEndsAndItsMiddle) {
    EXPECT_NEAR(quantile(Spread::bell, 20, 40, 0), 20, 1e-9);
    EXPECT_NEAR(quantile(Spread::bell, 20, 40, 0.5), 30, 1e-9);
    EXPECT_NEAR(quantile(Spread::bell, 20, 40, 1), 40, 1e-9);
    // Half the range, one deviation to each side, holds 0.6827 of 0.9545.
    const double inside = 0.6826895 / 0.9544997;
    EXPECT_NEAR(quantile(Spread::bell, 20, 40, 0.5 + inside / 2), 35, 1e-5);
}

RC_GTEST_PROP(Quantile, MoreShareIsNoSmallerFigure, ()) {
    const auto spread = *rc::gen::element(Spread::even, Spread::bell);
    const double a = *rc::gen::inRange(0, 1000) / 1000.0;
    const double b = *rc::gen::inRange(0, 1000) / 1000.0;
    const double low = quantile(spread, -3, 5, std::min(a, b));
    const double high = quantile(spread, -3, 5, std::max(a, b));
    RC_ASSERT(low <= high);
    RC_ASSERT(low >= -3 && high <= 5);
}

}  // namespace
}  // namespace toft::tolerance
