#include "base/units.h"

#include "base/text.h"

#include <gtest/gtest.h>

namespace toft {
namespace {

TEST(Units, AFactoryTakesTheUnitItNames) {
    EXPECT_DOUBLE_EQ(kiloamperes(1.2).number(), 1200);
    EXPECT_DOUBLE_EQ(milliamperes(30).number(), 0.03);
    EXPECT_DOUBLE_EQ(milliohms_per_metre(1.83).number(), 0.00183);
    EXPECT_DOUBLE_EQ(millimetres(14.2).number(), 0.0142);
}

TEST(Units, VoltsOverAmperesAreOhms) {
    const Ohms loop = volts(230) / amperes(115);
    EXPECT_EQ(loop, ohms(2));
    EXPECT_EQ(unit_of(Ohms::dimension), "Ω");
}

TEST(Units, AConstantTimesASectionSquaredIsAnEnergyPerOhm) {
    const AmpereSquareSeconds withstand =
        squared(heat_constant(143)) * squared(square_millimetres(10));
    EXPECT_DOUBLE_EQ(withstand.number(), 2044900);
}

TEST(Units, ALowPowerFactorMeansMoreVoltAmperesForTheSameWatts) {
    EXPECT_DOUBLE_EQ(apparent(Watts{1000}, 1.0).number(), 1000);
    EXPECT_DOUBLE_EQ(apparent(Watts{1000}, 0.8).number(), 1250);
}

TEST(Penny, HalvesGoUpEvenWhereBinaryFallsShort) {
    EXPECT_EQ(penny(pounds(192.192)), pounds(192.19));
    EXPECT_EQ(penny(pounds(0.125)), pounds(0.13));
    EXPECT_EQ(penny(pounds(1.005)), pounds(1.01));  // a little less than that in binary
    EXPECT_EQ(penny(pounds(0.0049)), pounds(0));
    EXPECT_EQ(penny(pounds(1709.79)), pounds(1709.79));
}

}  // namespace
}  // namespace toft
