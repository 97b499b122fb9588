#include "earth/rod_pair.h"

#include "earth/estimating.h"

#include <cmath>

namespace toft::earth {
namespace {

template <class L>
RodPair<L> pair(L& ledger, double length, double spacing) {
    return {given(ledger, "rho", ohm_metres(100)), given(ledger, "L", metres(length)),
            given(ledger, "s", metres(spacing))};
}

double mutual(double length, double spacing) {
    return worked([&](auto& ledger) {
        return mutual_resistance(ledger, {"R12", ""}, pair(ledger, length, spacing));
    });
}

double surface(double length, double distance) {
    return worked([&](auto& ledger) {
        return surface_resistance(ledger, {"V1", ""}, pair(ledger, length, distance));
    });
}

TEST(RodPair, MutualResistanceIsThatOfTheField) {
    for (double length : {1.2, 2.4}) {
        for (double spacing : {0.3, 1.2, 2.4, 6.0}) {
            const Field field = field_of(
                plain_soil(), {rod(0, 0, length, 0.016), rod(spacing, 0, length, 0.016, 1)});
            const double pair = (field.resistance(0, 0) + field.resistance(0, 1)).number() / 2;
            EXPECT_NEAR(mutual(length, spacing) / field.resistance(0, 1).number(), 1,
                        spacing < length       ? 0.03
                        : spacing < 2 * length ? 0.015
                                               : 0.01)
                << length << " " << spacing;
            EXPECT_NEAR(pair / field.joined().number(), 1, 1e-9);
        }
    }
}

TEST(RodPair, AgreesWithBothOfDwightsSeries) {
    // His R of the pair is half of rho/(2 pi L) (ln(4 L/a) - 1) and half of what stands here.
    const double length = 2;
    const double near = 0.4;
    const double x = near / length;
    const double series =
        std::log(4 * length / near) - 1 + x / 2 - x * x / 16 + x * x * x * x / 512;
    EXPECT_NEAR(mutual(length, near), 100 / (2 * pi * length) * series, 2e-4 * 100);
    const double far = 10;
    const double y = length / far;
    const double powers = 1 - y * y / 3 + 2 * y * y * y * y / 5;
    EXPECT_NEAR(mutual(length, far) / (100 / (2 * pi * far) * powers), 1, 1e-3);
}

TEST(RodPair, FarAwayARodIsAPoint) {
    EXPECT_NEAR(mutual(1.2, 200) * 2 * pi * 200 / 100, 1, 1e-4);
    EXPECT_NEAR(surface(1.2, 200) * 2 * pi * 200 / 100, 1, 1e-4);
}

TEST(RodPair, SurfaceIsThatOfTheField) {
    const Field field = field_of(plain_soil(), {rod(0, 0, 1.2, 0.016)});
    for (double x : {0.1, 0.5, 1.0, 2.5, 10.0}) {
        const double v = field.potential(spot(x, 0, 0), {amperes(1)}).number();
        EXPECT_NEAR(surface(1.2, x) / v, 1, x < 1 ? 0.06 : 0.015) << x;
    }
}

}  // namespace
}  // namespace toft::earth
