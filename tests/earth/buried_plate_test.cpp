#include "earth/buried_plate.h"

#include "earth/estimating.h"

#include <cmath>

namespace toft::earth {
namespace {

template <class L>
BuriedPlate<L> plate(L& ledger, double side, double depth, Lie lie) {
    return {given(ledger, "rho", ohm_metres(100)), given(ledger, "w", metres(side)),
            given(ledger, "b", metres(side)), given(ledger, "h", metres(depth)), lie};
}

double resistance(double side, double depth, Lie lie) {
    return worked([&](auto& ledger) {
        return buried_plate(ledger, {"R", ""}, plate(ledger, side, depth, lie)).resistance;
    });
}

/// A plate of wires side by side, each as thick as acts like the sheet between them.
double by_field(double side, double depth, Lie lie) {
    std::vector<Wire> wires;
    const int count = 20;
    const double step = side / count;
    for (int i = 0; i < count; ++i) {
        const double across = (i + 0.5) * step - side / 2;
        const bool flat = lie == Lie::flat;
        wires.push_back({spot(-side / 2, flat ? across : 0, flat ? depth : depth + across),
                         spot(side / 2, flat ? across : 0, flat ? depth : depth + across),
                         metres(step / (2 * pi)), 0});
    }
    return joined(plain_soil(), wires, 1, 16);
}

TEST(BuriedPlate, IsWithinOneAndAHalfPerCentOfAFieldOfWires) {
    for (double side : {0.6, 0.9, 1.2}) {
        for (double depth : {1.0, 1.5}) {
            for (Lie lie : {Lie::flat, Lie::on_edge}) {
                EXPECT_NEAR(resistance(side, depth, lie) / by_field(side, depth, lie), 1, 0.015)
                    << side << " at " << depth << (lie == Lie::flat ? " flat" : " on edge");
            }
        }
    }
}

TEST(BuriedPlate, VeryDeepIsADiscInOpenSoil) {
    const double radius = std::sqrt(0.36 / pi);
    EXPECT_NEAR(resistance(0.6, 1e4, Lie::flat) / (100 / (8 * radius)), 1, 1e-4);
}

TEST(BuriedPlate, SaysWhereItCannotBeTrusted) {
    Silent ledger;
    EXPECT_EQ(buried_plate(ledger, {"R", ""}, plate(ledger, 0.6, 1, Lie::flat)).trust,
              Trust::within);
    EXPECT_EQ(buried_plate(ledger, {"R", ""}, plate(ledger, 1.2, 0.7, Lie::flat)).trust,
              Trust::outside);
    auto narrow = plate(ledger, 0.6, 1, Lie::flat);
    narrow.width = metres(1.3);
    EXPECT_EQ(buried_plate(ledger, {"R", ""}, narrow).trust, Trust::outside);
}

}  // namespace
}  // namespace toft::earth
