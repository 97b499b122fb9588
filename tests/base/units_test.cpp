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

}  // namespace
}  // namespace toft
