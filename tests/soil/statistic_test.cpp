#include "soil/statistic.h"

#include <gtest/gtest.h>

#include <cmath>

namespace toft::soil {
namespace {

TEST(Statistic, MeetsTheTablesOfFisherAsRemembered) {
    EXPECT_NEAR(f_limit(2, 3, 0.05), 9.5521, 1e-3);
    EXPECT_NEAR(f_limit(2, 3, 0.01), 30.817, 1e-2);
    EXPECT_NEAR(f_limit(1, 4, 0.05), 2.7764 * 2.7764, 1e-2);  // Student's t, both sides
    EXPECT_NEAR(f_limit(4, 10, 0.05), 3.478, 1e-3);
    EXPECT_NEAR(f_limit_of_known_noise(1, 0.05), 3.8415, 1e-3);
    EXPECT_NEAR(f_limit_of_known_noise(4, 0.05) * 4, 9.4877, 1e-3);
}

TEST(Statistic, MeetsClosedFormsForTwoDegreesAbove) {
    for (int below : {1, 2, 5, 40, 199}) {
        for (double risk : {0.5, 0.05, 0.01, 1e-4}) {
            const double f = f_limit(2, below, risk);
            EXPECT_NEAR(std::pow(1 + 2 * f / below, -below / 2.0) / risk, 1, 1e-6);
        }
    }
    EXPECT_NEAR(f_limit_of_known_noise(2, 0.01), -std::log(0.01), 1e-9);
}

TEST(Statistic, KnownNoiseIsTheLimitOfManyReadings) {
    for (int above : {1, 2, 4}) {
        const double known = f_limit_of_known_noise(above, 0.05);
        EXPECT_GT(f_limit(above, 20, 0.05), known);
        EXPECT_NEAR(f_limit(above, 5000, 0.05) / known, 1, 2e-3);
    }
}

}  // namespace
}  // namespace toft::soil
