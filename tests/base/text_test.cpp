#include "base/text.h"

#include "base/units.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>
#include <cstdlib>
#include <limits>

namespace toft {
namespace {

TEST(Significant, WritesFiguresAsAPersonWould) {
    EXPECT_EQ(significant(0.06222, 3), "0.0622");
    EXPECT_EQ(significant(230, 3), "230");
    EXPECT_EQ(significant(1249.7, 4), "1250");
    EXPECT_EQ(significant(0.5, 4), "0.5");
    EXPECT_EQ(significant(-12.5, 4), "-12.5");
    EXPECT_EQ(significant(0, 4), "0");
    EXPECT_EQ(significant(-0.0, 4), "0");
    EXPECT_EQ(significant(16000, 4), "16000");
    EXPECT_EQ(significant(0.000002, 3), "0.000002");
}

TEST(Significant, SaysInfinityForWhatHasNoEnd) {
    EXPECT_EQ(significant(std::numeric_limits<double>::infinity(), 3), "inf");
}

RC_GTEST_PROP(Significant, ReadsBackToItsDigits, ()) {
    const int exponent = *rc::gen::inRange(-10, 12);
    const double x = *rc::gen::inRange(-99999, 100000) / 99999.0 * std::pow(10, exponent);
    const int digits = *rc::gen::inRange(3, 13);
    const double back = std::strtod(significant(x, digits).c_str(), nullptr);
    RC_ASSERT(std::fabs(back - x) <= 0.5 * std::pow(10, 1 - digits) * std::fabs(x) * 1.0000001);
}

TEST(Fixed, KeepsItsDecimals) {
    EXPECT_EQ(fixed(1.5, 2), "1.50");
    EXPECT_EQ(fixed(2.999, 1), "3.0");
}

TEST(UnitOf, NamesTheUnitsOfTheTrade) {
    EXPECT_EQ(unit_of(Volts::dimension), "V");
    EXPECT_EQ(unit_of(Ohms::dimension), "Ω");
    EXPECT_EQ(unit_of(OhmsPerMetre::dimension), "Ω/m");
    EXPECT_EQ(unit_of(OhmMetres::dimension), "Ωm");
    EXPECT_EQ(unit_of(VoltAmperes::dimension), "VA");
    EXPECT_EQ(unit_of(AmpereSquareSeconds::dimension), "A²s");
    EXPECT_EQ(unit_of(HeatConstant::dimension), "A√s/mm²");
    EXPECT_EQ(unit_of(SquareMillimetres::dimension), "mm²");
    EXPECT_EQ(unit_of(PerKelvin::dimension), "1/K");
    EXPECT_EQ(unit_of(PoundsPerMetre::dimension), "£/m");
    EXPECT_EQ(unit_of(Dimension{}), "");
}

TEST(UnitOf, SpellsOutWhatHasNoName) {
    using Square = decltype(squared(ohms(1)));
    EXPECT_EQ(unit_of(Square::dimension), "V²·A^-2");
    using OverSection = decltype(amperes(1) / square_millimetres(1));
    EXPECT_EQ(unit_of(OverSection::dimension), "A·mm²^-1");
}

}  // namespace
}  // namespace toft
