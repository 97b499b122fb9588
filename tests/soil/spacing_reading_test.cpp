#include "soil/spacing_reading.h"

#include "soil/soundings.h"

#include <rapidcheck/gtest.h>

#include <limits>

namespace toft::soil {
namespace {

std::vector<std::string> places(const std::vector<SpacingReading>& readings) {
    std::vector<std::string> all;
    for (const Fault& fault : faults_of(readings)) all.push_back(fault.code + fault.pointer);
    return all;
}

TEST(SpacingReading, PinsWithoutDepthGiveTwoPiSpacing) {
    // MIL-HDBK-419A vol. 2: 610 cm and 2 ohm are 7662 ohm cm,
    // http://navalfacilities.tpub.com/hdbk419a_vol2/hdbk419a_vol20021.htm
    EXPECT_NEAR(apparent_resistivity({wenner(6.10), ohms(2)}).number(), 76.62, 0.05);
    EXPECT_NEAR(geometric_factor(wenner(3)).number(), 2 * pi * 3, 1e-12);
}

TEST(SpacingReading, PinDepthFollowsTheFormulaOfIeee81) {
    for (double a : {0.5, 1.0, 4.0}) {
        for (double b : {0.0, 0.1, 0.3}) {
            const double formula =
                4 * pi * a /
                (1 + 2 * a / std::sqrt(a * a + 4 * b * b) - a / std::sqrt(a * a + b * b));
            EXPECT_NEAR(geometric_factor(wenner(a, b)).number() / formula, 1, 1e-12);
        }
    }
}

TEST(SpacingReading, PinsToATwentiethOfTheSpacingMayPassForPoints) {
    // The rule of MIL-HDBK-419A, same page; of the reading that is under half a per cent.
    EXPECT_NEAR(geometric_factor(wenner(2, 0.1)) / geometric_factor(wenner(2)), 1, 0.005);
    EXPECT_GT(geometric_factor(wenner(2, 1)) / geometric_factor(wenner(2)), 1.2);
}

TEST(SpacingReading, CloseInnerPinsGiveTheUsualFormula) {
    const double half = 10;
    const double inner = 0.5;
    const double exact = pi * (half * half - inner * inner / 4) / inner;
    EXPECT_NEAR(geometric_factor(schlumberger(half, inner)).number() / exact, 1, 1e-9);
    EXPECT_NEAR(geometric_factor(schlumberger(1.5, 1)) / geometric_factor(wenner(1)), 1, 1e-12);
}

TEST(SpacingReading, SaysAllThatIsWrong) {
    const double nan = std::numeric_limits<double>::quiet_NaN();
    const std::vector<SpacingReading> bad{{wenner(0), ohms(1)},
                                          {wenner(-1), ohms(-1)},
                                          {wenner(1), ohms(0)},
                                          {wenner(nan), ohms(nan)},
                                          {schlumberger(5, 0.009), ohms(1)},
                                          {schlumberger(5, 10), ohms(1)},
                                          {wenner(1, -0.1), ohms(1)},
                                          {wenner(1, 1.1), ohms(1)},
                                          {wenner(3000), ohms(1)}};
    EXPECT_EQ(places(bad),
              (std::vector<std::string>{
                  "out-of-range/0/spacing_m", "out-of-range/1/spacing_m",
                  "out-of-range/1/resistance_ohm", "out-of-range/2/resistance_ohm",
                  "out-of-range/3/spacing_m", "out-of-range/3/resistance_ohm",
                  "out-of-range/4/potential_m", "out-of-range/5/potential_m",
                  "out-of-range/6/depth_m", "out-of-range/7/depth_m", "out-of-range/8/spacing_m"}));
    EXPECT_TRUE(faults_of(std::vector<SpacingReading>{{wenner(1, 0.2), ohms(10)}}).empty());
    EXPECT_TRUE(faults_of(std::vector<Spread>{schlumberger(5, 1)}).empty());
}

RC_GTEST_PROP(SpacingReadingLaws, DeeperPinsReadMoreResistivityFromTheSameOhms, ()) {
    const double a = *rc::gen::inRange(10, 5000) / 100.0;
    const double b = a * *rc::gen::inRange(0, 90) / 100.0;
    RC_ASSERT(geometric_factor(wenner(a, b + 0.05 * a)) > geometric_factor(wenner(a, b)));
    RC_ASSERT(std::fabs(geometric_factor(wenner(2 * a, 2 * b)) / geometric_factor(wenner(a, b)) -
                        2) < 1e-9);
}

}  // namespace
}  // namespace toft::soil
