#include "base/quantity.h"

#include "base/temperature.h"
#include "base/units.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <type_traits>

namespace toft {
namespace {

TEST(Quantity, VoltsOverOhmsAreAmperes) {
    static_assert(std::is_same_v<decltype(volts(1) / ohms(1)), Amperes>);
    EXPECT_EQ(volts(230) / ohms(2), amperes(115));
}

TEST(Quantity, ResistanceOfALengthIsOhms) {
    static_assert(std::is_same_v<decltype(ohms_per_metre(1) * metres(1)), Ohms>);
    EXPECT_NEAR((milliohms_per_metre(1.83) * metres(34)).number(), 0.06222, 1e-12);
}

TEST(Quantity, WhereNothingIsLeftABareNumberRemains) {
    static_assert(std::is_same_v<decltype(amperes(1) / amperes(1)), double>);
    static_assert(std::is_same_v<decltype(per_kelvin(1) * kelvins(1)), double>);
    EXPECT_EQ(amperes(30) / amperes(20), 1.5);
}

TEST(Quantity, FaultHeatComesOutInAmpereSquareSeconds) {
    static_assert(
        std::is_same_v<decltype(squared(heat_constant(1)) * squared(square_millimetres(1))),
                       AmpereSquareSeconds>);
    static_assert(std::is_same_v<decltype(squared(amperes(1)) * seconds(1)), AmpereSquareSeconds>);
}

TEST(Quantity, ARootUndoesASquare) {
    static_assert(std::is_same_v<decltype(root(squared(ohms(3)))), Ohms>);
    EXPECT_EQ(root(squared(ohms(3)) + squared(ohms(4))), ohms(5));
}

TEST(Quantity, FactoriesSayTheirUnit) {
    EXPECT_EQ(kiloamperes(16), amperes(16000));
    EXPECT_EQ(milliamperes(30), amperes(0.03));
    EXPECT_EQ(millimetres(14.2), metres(14.2 / 1000));
    EXPECT_EQ(milliohms_per_metre(4), ohms_per_metre(0.004));
}

TEST(Quantity, ApparentPowerIsWattsOverPowerFactor) {
    EXPECT_EQ(apparent(Watts{3000}, 0.75), VoltAmperes(4000));
    EXPECT_EQ(apparent(Watts{4600}, 1) / volts(230), amperes(20));
}

TEST(Quantity, LeastAndMostKeepTheirUnit) {
    EXPECT_EQ(least(amperes(32), amperes(40)), amperes(32));
    EXPECT_EQ(most(amperes(32), amperes(40)), amperes(40));
    EXPECT_EQ(least(celsius(10), celsius(20)), celsius(10));
    EXPECT_EQ(most(celsius(10), celsius(20)), celsius(20));
}

TEST(Quantity, TemperaturesDifferByKelvins) {
    static_assert(std::is_same_v<decltype(celsius(90) - celsius(20)), Kelvins>);
    EXPECT_EQ(celsius(90) - celsius(20), kelvins(70));
    EXPECT_EQ(celsius(20) + kelvins(70), celsius(90));
}

RC_GTEST_PROP(Quantity, OrdersAndAddsLikeItsNumber, ()) {
    const double a = *rc::gen::inRange(-1000, 1000) / 7.0;
    const double b = *rc::gen::inRange(-1000, 1000) / 7.0;
    RC_ASSERT((volts(a) + volts(b)).number() == a + b);
    RC_ASSERT((volts(a) - volts(b)).number() == a - b);
    RC_ASSERT((volts(a) < volts(b)) == (a < b));
    RC_ASSERT((volts(a) <= volts(b)) == (a <= b));
    RC_ASSERT((volts(a) > volts(b)) == (a > b));
    RC_ASSERT((volts(a) >= volts(b)) == (a >= b));
    RC_ASSERT((volts(a) != volts(b)) == (a != b));
    Volts sum = volts(a);
    sum += volts(b);
    RC_ASSERT(sum == volts(a) + volts(b));
}

}  // namespace
}  // namespace toft
