#include "earth/buried_ring.h"

#include "earth/estimating.h"

namespace toft::earth {
namespace {

template <class L>
BuriedRing<L> ring(L& ledger, double diameter, double depth) {
    return {given(ledger, "rho", ohm_metres(100)), given(ledger, "D", metres(diameter)),
            given(ledger, "d", metres(0.008)), given(ledger, "h", metres(depth))};
}

double resistance(double diameter, double depth) {
    return worked([&](auto& ledger) {
        return buried_ring(ledger, {"R", ""}, ring(ledger, diameter, depth)).resistance;
    });
}

Trust trust(double diameter, double depth) {
    Silent ledger;
    return buried_ring(ledger, {"R", ""}, ring(ledger, diameter, depth)).trust;
}

TEST(BuriedRing, IsWithinAPerCentOfTheField) {
    for (double diameter : {3.0, 5.0, 12.0}) {
        for (double depth : {0.3, 0.6}) {
            const auto wires = ring_wires(spot(0, 0, depth), metres(diameter), metres(0.004), 48);
            EXPECT_NEAR(resistance(diameter, depth) / joined(plain_soil(), wires, 1, 2), 1, 0.01)
                << diameter << " " << depth;
            EXPECT_EQ(trust(diameter, depth), Trust::within);
        }
    }
}

TEST(BuriedRing, OnTheSurfaceReadsLow) {
    const auto wires = ring_wires(spot(0, 0, 0.004), metres(5), metres(0.004), 48);
    EXPECT_EQ(trust(5, 0.004), Trust::unsafe);
    EXPECT_EQ(trust(1, 0.6), Trust::outside);
    EXPECT_GT(joined(plain_soil(), wires, 1, 2), 1.3 * resistance(5, 0.6));
}

}  // namespace
}  // namespace toft::earth
