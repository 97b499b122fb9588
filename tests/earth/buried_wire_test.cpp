#include "earth/buried_wire.h"

#include "earth/estimating.h"

#include <cmath>

namespace toft::earth {
namespace {

template <class L>
BuriedWire<L> wire(L& ledger, double length, double radius, double depth) {
    return {given(ledger, "rho", ohm_metres(100)), given(ledger, "L", metres(length)),
            given(ledger, "a", metres(radius)), given(ledger, "h", metres(depth))};
}

double wire_resistance(double length, double radius, double depth) {
    return worked([&](auto& ledger) {
        return buried_wire(ledger, {"R", ""}, wire(ledger, length, radius, depth)).resistance;
    });
}

Trust trust(double length, double radius, double depth) {
    Silent ledger;
    return buried_wire(ledger, {"R", ""}, wire(ledger, length, radius, depth)).trust;
}

double by_field(double length, double radius, double depth) {
    return joined(plain_soil(), {{spot(0, 0, depth), spot(length, 0, depth), metres(radius), 0}},
                  0.5, 40);
}

TEST(BuriedWire, IsWithinAPerCentOfTheField) {
    for (double length : {2.0, 5.0, 10.0, 30.0}) {
        for (double depth : {0.3, 0.6, 1.5}) {
            const double ratio =
                wire_resistance(length, 0.004, depth) / by_field(length, 0.004, depth);
            EXPECT_GT(ratio, 1.0) << length << " " << depth;
            EXPECT_LT(ratio, 1.012) << length << " " << depth;
            EXPECT_EQ(trust(length, 0.004, depth), Trust::within);
        }
    }
}

TEST(BuriedWire, VeryDeepIsTwoRodsOfHalfTheLengthEndToEnd) {
    // A rod at the surface and its image above are one wire in open soil, half of it ours.
    const double half = 100 / (2 * pi * 5) * (std::log(8 * 5 / 0.008) - 1);
    EXPECT_NEAR(wire_resistance(10, 0.004, 5000) / (half / 2), 1, 2e-4);
}

TEST(BuriedWire, OnTheSurfaceIsUnsafeAndShortIsOutside) {
    EXPECT_EQ(trust(10, 0.004, 0.01), Trust::unsafe);
    EXPECT_EQ(trust(0.3, 0.004, 0.6), Trust::outside);
}

TEST(BuriedWire, StripCountsAsAQuarterOfItsRim) {
    EXPECT_NEAR(worked([](auto& ledger) {
                    return strip_radius(ledger, {"a", ""}, given(ledger, "w", millimetres(25)),
                                        given(ledger, "t", millimetres(3)));
                }),
                0.007, 1e-12);
}

/// A flat strip made of wires side by side, as a field.
TEST(BuriedWire, StripIsThatOfManyWiresSideBySide) {
    std::vector<Wire> wires;
    const int count = 8;
    const double width = 0.2;
    for (int i = 0; i < count; ++i) {
        const double y = (i + 0.5) * width / count;
        // Wires a spacing apart act as a sheet where their radius is the spacing over 2 pi.
        wires.push_back({spot(0, y, 0.6), spot(10, y, 0.6), metres(width / count / (2 * pi)), 0});
    }
    EXPECT_NEAR(wire_resistance(10, width / 4, 0.6) / joined(plain_soil(), wires, 0.5, 20), 1,
                0.012);
}

}  // namespace
}  // namespace toft::earth
