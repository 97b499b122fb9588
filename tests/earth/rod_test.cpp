#include "earth/rod.h"

#include "support/catalogue.h"
#include "support/working.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>

namespace toft::earth {
namespace {

const Name name{"RA", "electrode"};

double resistance(double rho, double length, double diameter, double count = 1) {
    Silent ledger;
    const Rods<Silent> rods{ohm_metres(rho), metres(length), metres(diameter), count};
    return rod_resistance(ledger, name, support::catalogue().rod_parallel, rods).number();
}

TEST(Rod, IsProportionalToTheSoil) {
    EXPECT_NEAR(resistance(200, 2.4, 0.016), 2 * resistance(100, 2.4, 0.016), 1e-9);
}

TEST(Rod, OfTwiceTheLengthHasALittleMoreThanHalf) {
    const double ratio = resistance(100, 2.4, 0.016) / resistance(100, 1.2, 0.016);
    EXPECT_GT(ratio, 0.5);
    EXPECT_LT(ratio, 0.6);
}

TEST(Rod, ThicknessHardlyMatters) {
    const double ratio = resistance(100, 2.4, 0.020) / resistance(100, 2.4, 0.010);
    EXPECT_LT(ratio, 1);
    EXPECT_GT(ratio, 0.88);
}

TEST(Rod, SeveralHelpButLessThanInProportion) {
    const double one = resistance(100, 2.4, 0.016);
    EXPECT_NEAR(resistance(100, 2.4, 0.016, 2), one * 1.16 / 2, 1e-9);
    EXPECT_NEAR(resistance(100, 2.4, 0.016, 3), one * 1.29 / 3, 1e-9);
    EXPECT_NEAR(resistance(100, 2.4, 0.016, 4), one * 1.36 / 4, 1e-9);
}

/// The mean potential over a thin rod of a current that leaves it evenly: the rod and its image
/// above the ground, summed over pieces. Another way to the same resistance, by numbers.
double by_pieces(double rho, double length, double diameter) {
    constexpr int pieces = 400;
    const double radius = diameter / 2;
    const double step = length / pieces;
    double sum = 0;
    for (int i = 0; i < pieces; ++i) {
        const double z = (i + 0.5) * step;
        for (int j = 0; j < 2 * pieces; ++j) {
            // 1/distance integrated over piece j of rod and image together
            const double a = -length + j * step - z;
            sum += std::asinh((a + step) / radius) - std::asinh(a / radius);
        }
    }
    return rho / (4 * 3.14159265358979 * length) * sum / pieces;
}

TEST(Rod, AgreesWithTheMeanPotentialSummedOverPieces) {
    for (double length : {1.2, 2.4, 3.6}) {
        for (double diameter : {0.0095, 0.0142, 0.02}) {
            EXPECT_NEAR(resistance(100, length, diameter) / by_pieces(100, length, diameter), 1,
                        0.02)
                << length << " m, " << diameter << " m";
        }
    }
}

RC_GTEST_PROP(Rod, MoreMetalNeverHasMoreResistanceAndTheWorkingHolds, ()) {
    const double length = *rc::gen::inRange(3, 300) / 10.0;
    const double diameter = *rc::gen::inRange(5, 60) / 1000.0;
    const double count = *rc::gen::inRange(1, 5);
    const double rho = *rc::gen::inRange(1, 5000);
    RC_ASSERT(resistance(rho, length * 1.1, diameter, count) <
              resistance(rho, length, diameter, count));
    RC_ASSERT(resistance(rho, length, diameter * 1.1, count) <
              resistance(rho, length, diameter, count));
    if (count > 1) {
        RC_ASSERT(resistance(rho, length, diameter, count) <
                  resistance(rho, length, diameter, count - 1));
    }
    Recording ledger;
    Rods<Recording> rods;
    rods.resistivity = ledger.stated({"rho", ""}, ohm_metres(rho), "survey");
    rods.length = ledger.stated({"L", ""}, metres(length), "survey");
    rods.diameter = ledger.stated({"d", ""}, metres(diameter), "survey");
    rods.count = count;
    const auto r = rod_resistance(ledger, name, support::catalogue().rod_parallel, rods);
    RC_ASSERT(r.value.number() == resistance(rho, length, diameter, count));
    for (const std::string& wrong : support::wrong_lines(ledger.lines())) RC_FAIL(wrong);
}

}  // namespace
}  // namespace toft::earth
